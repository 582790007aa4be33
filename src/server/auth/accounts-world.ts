import type { Context } from 'hono'
import type { Act } from '../../store/noun.ts'
import type { AppEnv } from '../api-error.ts'
import { type PersonAsking, whoOf } from './asker.ts'
import type { Proving } from './prove.ts'
import type { SessionWorld } from './sessions.ts'

/** What the routes about access work with; there is none where nobody signs in. */
export type AccountsWorld = SessionWorld & Proving

export function personAsking(c: Context<AppEnv>): PersonAsking | null {
  const asker = c.get('asker')
  return asker.kind === 'account' ? asker : null
}

/** A change of who may come in, as the history names it. */
export const accessAct = (c: Context<AppEnv>, at: Date, who = whoOf(c.get('asker'))): Act => ({
  who,
  at,
  from: c.get('from'),
  requestKey: null,
})
