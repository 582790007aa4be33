import type { Access } from '../../store/access/access.ts'
import type { Account } from '../../store/access/accounts.ts'
import type { PasswordHashing } from './passwords.ts'
import { totpStep } from './second-factor.ts'
import { codeHash } from './secrets.ts'
import { tryKeys, waitBeforeTry } from './tries.ts'

export type Proving = {
  readonly access: Access
  readonly hashing: PasswordHashing
  readonly now: () => Date
}

export type Proved =
  | { readonly outcome: 'done'; readonly account: Account }
  | { readonly outcome: 'wrong' | 'factor-wanted' | 'factor-wrong' }
  | { readonly outcome: 'wait'; readonly waitMs: number }

export type Given = {
  readonly login: string
  readonly password: string
  /** Of the second factor; null: not asked for, of somebody who is signed in already. */
  readonly code: string | undefined | null
  readonly from: string
}

/** Verified for a name nobody has, so that the answer takes as long as for one somebody has. */
const stands = new WeakMap<PasswordHashing, Promise<string>>()
function standIn(hashing: PasswordHashing): Promise<string> {
  const known = stands.get(hashing)
  if (known !== undefined) return known
  const made = hashing.hash('the password of nobody')
  stands.set(hashing, made)
  return made
}

async function isCodeTaken({ access, now }: Proving, account: Account, code: string): Promise<boolean> {
  if (account.totpSecret === null || code === null) return false
  const step = totpStep(account.totpSecret, code, now())
  if (step !== null) return access.accounts.takeStep(account.id, step)
  return access.accounts.takeRecoveryCode(account.id, codeHash(code))
}

async function checked(proving: Proving, { login, password, code }: Given): Promise<Proved> {
  const { access, hashing } = proving
  const account = await access.accounts.byLogin(login)
  const isRight = await hashing.verify(account?.passwordHash ?? (await standIn(hashing)), password)
  if (account === null || account.passwordHash === null || !account.isActive || !isRight) {
    return { outcome: 'wrong' }
  }
  if (account.totpSecret === null || code === null) return { outcome: 'done', account }
  if (code === undefined) return { outcome: 'factor-wanted' }
  return (await isCodeTaken(proving, account, code))
    ? { outcome: 'done', account }
    : { outcome: 'factor-wrong' }
}

/**
 * Is it them? The try is counted as a failure before anything is looked at, and taken off again once it is none; a name
 * nobody has is counted, waited for and verified like any other.
 */
export async function prove(proving: Proving, given: Given): Promise<Proved> {
  const { failedTries } = proving.access
  const keys = tryKeys(given.login, given.from)
  const now = proving.now()
  const waitMs = await failedTries.begin(Object.values(keys), [keys.both, keys.login], now, (tries) =>
    waitBeforeTry(keys, tries, now),
  )
  if (waitMs > 0) return { outcome: 'wait', waitMs }
  const proved = await checked(proving, given)
  if (proved.outcome === 'done') await failedTries.clear([keys.both, keys.login])
  else if (proved.outcome !== 'factor-wanted') await failedTries.add([keys.place], now)
  return proved
}

/** Makes the time of the first unknown name like that of any later one. */
export const warmUp = async ({ hashing }: Pick<Proving, 'hashing'>): Promise<void> => {
  await standIn(hashing)
}
