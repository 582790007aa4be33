import type { Access } from '../../store/access/access.ts'
import { codeHash, newOneTimeCode } from './secrets.ts'

const DAY_MS = 24 * 60 * 60 * 1000

/** Nobody is there yet who could let anybody in. */
export async function needsFirstOwner({ accounts }: Pick<Access, 'accounts'>): Promise<boolean> {
  const all = await accounts.list()
  return !all.some((each) => each.role === 'owner' && each.isActive && each.passwordHash !== null)
}

/** A code for whoever reads it off the console; null when an owner is there. It takes the place of an earlier one. */
export async function firstOwnerCode(access: Access, now: Date): Promise<string | null> {
  if (!(await needsFirstOwner(access))) return null
  const code = newOneTimeCode()
  const expiresAt = new Date(now.getTime() + DAY_MS).toISOString()
  await access.codes.put({ purpose: 'first-owner', account: null, expiresAt }, codeHash(code))
  return code
}
