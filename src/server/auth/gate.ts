import type { Context, MiddlewareHandler } from 'hono'
import type { Stores } from '../../store/open-store.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { uuidOf } from '../id-in-path.ts'
import type { Asker } from './asker.ts'
import { clientAddress } from './client-address.ts'
import type { CookieKind } from './cookie.ts'
import { identify } from './identify.ts'
import { whoseIs } from './own.ts'
import { type Role, rightOf } from './roles.ts'
import { type Need, needOf } from './route-table.ts'

const SHARERS: readonly Role[] = ['owner', 'estimator']

async function mayUseNoun(
  store: Stores,
  asker: Extract<Asker, { readonly role: Role }>,
  need: Extract<Need, { readonly by: 'noun' }>,
  id: string,
): Promise<boolean> {
  const right = rightOf(asker.role, need.noun)
  if (need.act === 'read') return right !== 'none'
  if (right === 'all') return true
  if (right !== 'own') return false
  const uuid = uuidOf(id)
  // What is no id is nobody's; the route says what is wrong with it.
  return uuid === null || (await whoseIs(store, asker, need.noun, uuid)) !== 'other'
}

function mayUse(store: Stores, asker: Asker, need: Need, id: string): boolean | Promise<boolean> {
  if (need.by === 'anyone' || asker.kind === 'open') return true
  if (asker.kind === 'nobody') return false
  switch (need.by) {
    case 'signed-in':
      return true
    case 'person':
      return asker.kind === 'account'
    case 'owner':
      return asker.kind === 'account' && asker.role === 'owner'
    case 'sharer':
      return asker.kind === 'account' && SHARERS.includes(asker.role)
    case 'noun':
      return mayUseNoun(store, asker, need, id)
  }
}

function turnAway(c: Context<AppEnv>, asker: Asker, need: Need) {
  if (asker.kind === 'nobody') {
    c.header('WWW-Authenticate', 'Bearer')
    return refuse(c, 401, 'not-signed-in')
  }
  const lacksFactor =
    asker.kind === 'account' && asker.account.role === 'owner' && asker.role !== 'owner' && need.by !== 'noun'
  return refuse(c, 403, lacksFactor ? 'second-factor-needed' : 'not-allowed')
}

export type GateRules = {
  readonly now: () => Date
  readonly trustedProxies: number
  /** null where nobody signs in, because only this machine is answered. */
  readonly cookies: CookieKind | null
}

/** Finds out who asks, and lets them no further than the table says. */
export const gate = (store: Stores, rules: GateRules): MiddlewareHandler<AppEnv> => {
  return async (c, next) => {
    c.set('from', clientAddress(c, rules.trustedProxies))
    const { cookies } = rules
    const asker: Asker =
      cookies === null ? { kind: 'open' } : await identify(c, store.access, { now: rules.now(), cookies })
    c.set('asker', asker)
    if (asker.kind !== 'open') {
      const found = needOf(c.req.method, c.req.path)
      // What the table does not know does not exist; to a stranger not even that is told.
      if (found === null) {
        return asker.kind === 'nobody' ? turnAway(c, asker, { by: 'signed-in' }) : refuse(c, 404, 'not-found')
      }
      if (!(await mayUse(store, asker, found.need, found.id))) return turnAway(c, asker, found.need)
    }
    await next()
  }
}
