import type { HttpBindings } from '@hono/node-server'
import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import type { Issue } from '../../shared/core/outcome.ts'
import { issuesWithText } from '../issues-with-text.ts'
import { StoreError } from '../store/store-error.ts'
import type { Asker } from './auth/asker.ts'
import { languageOf } from './language.ts'
import { PlanningError } from './planning/plan-task.ts'

/** What every route may count on. */
export type AppEnv = {
  Bindings: Partial<HttpBindings>
  Variables: { requestId: string; asker: Asker; from: string }
}

export type ApiErrorCode =
  | 'bad-json'
  | 'bad-request'
  | 'body-too-large'
  | 'code-wanted'
  | 'conflict'
  | 'foreign-host'
  | 'foreign-origin'
  | 'gone'
  | 'internal'
  | 'key-reused'
  | 'last-owner'
  | 'login-taken'
  | 'not-allowed'
  | 'not-for-this-account'
  | 'not-found'
  | 'not-json'
  | 'not-signed-in'
  | 'password-common'
  | 'password-short'
  | 'precondition-required'
  | 'refused'
  | 'second-factor-needed'
  | 'store-full'
  | 'store-unavailable'
  | 'too-busy'
  | 'too-long'
  | 'too-many-tries'
  | 'wrong-code'
  | 'wrong-credentials'
  | 'wrong-media-type'

/** The one shape of an error, whatever went wrong. */
export const errorBody = (c: Context<AppEnv>, code: ApiErrorCode, issues: readonly Issue[] = []) => ({
  code,
  requestId: c.get('requestId'),
  issues: issuesWithText(issues, languageOf(c)),
})

export function refuse(
  c: Context<AppEnv>,
  status: ContentfulStatusCode,
  code: ApiErrorCode,
  issues: readonly Issue[] = [],
) {
  c.header('Cache-Control', 'no-store')
  return c.json(errorBody(c, code, issues), status)
}

/** The one place a thrown error becomes an answer: detail goes to the log, not to the client. */
export const mapErrors = (log: (line: string) => void) => (error: Error, c: Context<AppEnv>) => {
  const about = `${c.req.method} ${c.req.path} ${c.get('requestId')}`
  if (error instanceof HTTPException && error.status < 500)
    return refuse(c, error.status as 400, 'bad-request')
  if (error instanceof StoreError) {
    log(`${about}: ${error.message} (${String(error.cause)})`)
    c.header('Retry-After', '5')
    return error.code === 'full' ? refuse(c, 507, 'store-full') : refuse(c, 503, 'store-unavailable')
  }
  if (error instanceof PlanningError) {
    c.header('Retry-After', '5')
    return refuse(c, 503, error.code === 'too-long' ? 'too-long' : 'too-busy')
  }
  log(`${about}: ${error.stack ?? String(error)}`)
  return refuse(c, 500, 'internal')
}
