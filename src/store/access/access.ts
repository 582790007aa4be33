import type { Database } from '../database.ts'
import { type Accounts, createAccounts } from './accounts.ts'
import { type ApiTokens, createApiTokens } from './api-tokens.ts'
import { createFailedTries, type FailedTries } from './failed-tries.ts'
import { createOneTimeCodes, type OneTimeCodes } from './one-time-codes.ts'
import { createSessions, type Sessions } from './sessions.ts'
import { createShareLinks, type ShareLinks } from './share-links.ts'
import { workingOn } from './working.ts'

/** Everything about who may come in. */
export type Access = {
  readonly accounts: Accounts
  readonly sessions: Sessions
  readonly codes: OneTimeCodes
  readonly failedTries: FailedTries
  readonly tokens: ApiTokens
  readonly shares: ShareLinks
}

export function createAccess(database: Database): Access {
  const working = workingOn(database)
  return {
    accounts: createAccounts(working),
    sessions: createSessions(working),
    codes: createOneTimeCodes(working),
    failedTries: createFailedTries(working),
    tokens: createApiTokens(working),
    shares: createShareLinks(working),
  }
}
