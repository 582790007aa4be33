import { Hono } from 'hono'
import { compress } from 'hono/compress'
import { requestId } from 'hono/request-id'
import { secureHeaders } from 'hono/secure-headers'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import { NOUN_PATHS } from '../store/nouns.ts'
import type { Stores } from '../store/open-store.ts'
import { type AppEnv, mapErrors, refuse } from './api-error.ts'
import type { AccountsWorld } from './auth/accounts-world.ts'
import type { CookieKind } from './auth/cookie.ts'
import { gate } from './auth/gate.ts'
import type { PasswordHashing } from './auth/passwords.ts'
import { hostRule, ownHostOnly } from './own-host.ts'
import { type Planner, planOnTheSpot } from './planning/plan-task.ts'
import { aboutRoutes } from './routes/about-routes.ts'
import { accountRoutes } from './routes/account-routes.ts'
import { contentRoutes } from './routes/content-routes.ts'
import { nounRoutes } from './routes/noun-routes.ts'
import { planRoutes } from './routes/plan-routes.ts'
import { relationRoutes } from './routes/relation-routes.ts'
import { releaseRoutes } from './routes/release-routes.ts'
import { schemaRoutes } from './routes/schema-routes.ts'
import { sessionRoutes } from './routes/session-routes.ts'
import { sharedRoute, shareRoutes } from './routes/share-routes.ts'
import { tokenRoutes } from './routes/token-routes.ts'
import { staticPages } from './static-pages.ts'

export type AppDependencies = {
  readonly store: Stores
  /** Absolute path of the built pages. */
  readonly webRoot: string
  /** What this server is called, besides the names of the machine itself. */
  readonly hosts: readonly string[]
  readonly now: () => Date
  /** People sign in; absent where only this machine is answered. */
  readonly accounts?: { readonly cookies: CookieKind; readonly hashing: PasswordHashing }
  /** How many proxies of ours stand before this server; none unless told. */
  readonly trustedProxies?: number
  /** Where users reach it, when that is a proxy's address: https://plans.example. */
  readonly publicOrigin?: string | null
  /** Without one plans are made on the spot. */
  readonly planner?: Planner
  /** One line for whoever runs the server. */
  readonly log: (line: string) => void
}

/** Nothing is fetched from anywhere else, and no page of anybody else's may frame this one. */
const headers = () =>
  secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'self'"],
      scriptSrc: ["'self'"],
      styleSrc: ["'self'"],
      imgSrc: ["'self'", 'data:', 'blob:'],
      connectSrc: ["'self'"],
      workerSrc: ["'self'"],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
    crossOriginOpenerPolicy: 'same-origin',
    crossOriginResourcePolicy: 'same-origin',
    // The crew's own place on the map is all the pages may ever ask the machine for.
    permissionsPolicy: {
      geolocation: ['self'],
      camera: [],
      microphone: [],
      payment: [],
      usb: [],
      serial: [],
      bluetooth: [],
      browsingTopics: [],
    },
    xFrameOptions: 'DENY',
    referrerPolicy: 'no-referrer',
    // Left to the proxy that ends TLS: this server speaks plain HTTP.
    strictTransportSecurity: false,
  })

function apiRoutes({ store, now, planner = planOnTheSpot, accounts, trustedProxies = 0 }: AppDependencies) {
  const world: AccountsWorld | null =
    accounts === undefined ? null : { access: store.access, now, ...accounts }
  const api = new Hono<AppEnv>()
    .use('*', gate(store, { now, trustedProxies, cookies: accounts?.cookies ?? null }))
    .use('*', async (c, next) => {
      await next()
      if (!c.res.headers.has('Cache-Control')) c.header('Cache-Control', 'no-store')
    })
    .route('/', aboutRoutes())
    .get('/health', async (c) => {
      await store.crossings.list({ after: null, limit: 1 })
      return c.json({ status: 'ok', engine: ENGINE_VERSION })
    })
    .route('/plans', planRoutes(planner))
    .route('/release', releaseRoutes(planner))
    .route('/schemas', schemaRoutes())
    .route('/relations', relationRoutes())
    .route('/session', sessionRoutes(world))
    .route('/accounts', accountRoutes(world))
    .route('/tokens', tokenRoutes(world))
    .route('/shares', shareRoutes(world, store))
    .route('/shared', sharedRoute(world, store, planner))
  for (const path of NOUN_PATHS) api.route(`/${path}`, nounRoutes(path, store, { planner, now }))
  api.route('/attachments', contentRoutes(store, now))
  return api.all('*', (c) => refuse(c, 404, 'not-found'))
}

/** The whole server, built from what it depends on; it opens nothing itself. */
export function buildApp(dependencies: AppDependencies) {
  return new Hono<AppEnv>()
    .use('*', requestId())
    .use('*', headers())
    .use('*', ownHostOnly(hostRule(dependencies.hosts), dependencies.publicOrigin ?? null))
    .use('*', compress())
    .onError(mapErrors(dependencies.log))
    .notFound((c) => refuse(c, 404, 'not-found'))
    .route('/api', apiRoutes(dependencies))
    .route('/', staticPages(dependencies.webRoot))
}
