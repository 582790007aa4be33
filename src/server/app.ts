import { Hono } from 'hono'
import { compress } from 'hono/compress'
import { requestId } from 'hono/request-id'
import { secureHeaders } from 'hono/secure-headers'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import { NOUN_PATHS } from '../store/nouns.ts'
import type { Stores } from '../store/open-store.ts'
import { type AppEnv, mapErrors, refuse } from './api-error.ts'
import { hostRule, ownHostOnly } from './own-host.ts'
import { type Planner, planOnTheSpot } from './planning/plan-task.ts'
import { aboutRoutes } from './routes/about-routes.ts'
import { contentRoutes } from './routes/content-routes.ts'
import { nounRoutes } from './routes/noun-routes.ts'
import { planRoutes } from './routes/plan-routes.ts'
import { relationRoutes } from './routes/relation-routes.ts'
import { schemaRoutes } from './routes/schema-routes.ts'
import { staticPages } from './static-pages.ts'

export type AppDependencies = {
  readonly store: Stores
  /** Absolute path of the built pages. */
  readonly webRoot: string
  /** What this server is called, besides the names of the machine itself. */
  readonly hosts: readonly string[]
  readonly now: () => Date
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

function apiRoutes({ store, now, planner = planOnTheSpot }: AppDependencies) {
  const api = new Hono<AppEnv>()
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
    .route('/schemas', schemaRoutes())
    .route('/relations', relationRoutes())
  for (const path of NOUN_PATHS) api.route(`/${path}`, nounRoutes(path, store[path], { planner, now }))
  api.route('/attachments', contentRoutes(store, now))
  return api.all('*', (c) => refuse(c, 404, 'not-found'))
}

/** The whole server, built from what it depends on; it opens nothing itself. */
export function buildApp(dependencies: AppDependencies) {
  return new Hono<AppEnv>()
    .use('*', requestId())
    .use('*', headers())
    .use('*', ownHostOnly(hostRule(dependencies.hosts)))
    .use('*', compress())
    .onError(mapErrors(dependencies.log))
    .notFound((c) => refuse(c, 404, 'not-found'))
    .route('/api', apiRoutes(dependencies))
    .route('/', staticPages(dependencies.webRoot))
}
