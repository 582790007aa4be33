import type { Access } from '../../store/access/access.ts'
import { firstOwnerCode } from './first-owner.ts'
import { codeHash, newOneTimeCode } from './secrets.ts'

const HOUR_MS = 60 * 60 * 1000

export type OwnerReset =
  | {
      readonly ok: true
      /** null: there is no owner yet, and the code makes the first one. */
      readonly login: string | null
      readonly code: string
      readonly expiresAt: string
    }
  | { readonly ok: false; readonly sentence: string }

const no = (sentence: string): OwnerReset => ({ ok: false, sentence })

/** A code for an owner who cannot sign in any more. Nothing changes before it is used. */
export async function ownerResetCode(access: Access, login: string | null, now: Date): Promise<OwnerReset> {
  const expiresAt = new Date(now.getTime() + HOUR_MS).toISOString()
  const all = await access.accounts.list()
  const owners = all.filter((each) => each.role === 'owner' && each.isActive)
  const named = login === null ? owners : owners.filter((each) => each.login === login.toLowerCase())
  const [owner] = named
  if (owner === undefined) {
    if (login !== null)
      return no(
        `There is no owner ${login}. Owners: ${owners.map((each) => each.login).join(', ') || 'none'}.`,
      )
    const code = await firstOwnerCode(access, now)
    return code === null ? no('There is no owner to let in.') : { ok: true, login: null, code, expiresAt }
  }
  if (named.length > 1) {
    return no(`Say which owner with --login: ${named.map((each) => each.login).join(', ')}.`)
  }
  const code = newOneTimeCode()
  await access.codes.put({ purpose: 'reset', account: owner.id, expiresAt }, codeHash(code))
  return { ok: true, login: owner.login, code, expiresAt }
}
