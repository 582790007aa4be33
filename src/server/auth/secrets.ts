import { createHash, randomBytes } from 'node:crypto'

const SESSION_BYTES = 32
/** 128 bits: nobody guesses one, and it still fits a message. */
const LINK_BYTES = 16

/** What is handed out once; only its hash is kept, so a stolen store lets nobody in. */
export const newSessionToken = (): string => randomBytes(SESSION_BYTES).toString('base64url')
export const newLinkToken = (): string => randomBytes(LINK_BYTES).toString('base64url')
/** A prefix tells whoever finds one lying about what it is. */
export const newApiToken = (): string => `underlane_${randomBytes(SESSION_BYTES).toString('base64url')}`

/** Random secrets need no slow hash: there is nothing to guess them from. */
export const secretHash = (secret: string): string => createHash('sha256').update(secret).digest('hex')

/** Letters and digits that nobody mistakes for another when reading aloud: no I, L, O, U. */
const SPOKEN = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'

function spokenCode(groups: number, groupLength: number): string {
  const signs = [...randomBytes(groups * groupLength)].map((byte) => SPOKEN[byte % SPOKEN.length])
  return Array.from({ length: groups }, (_, at) =>
    signs.slice(at * groupLength, (at + 1) * groupLength).join(''),
  ).join('-')
}

/** 80 bits, read off a console or a note and typed once. */
export const newOneTimeCode = (): string => spokenCode(4, 4)
/** 50 bits each, under the same growing delays as a password. */
export const newRecoveryCode = (): string => spokenCode(2, 5)

/** As it was meant: without the dashes and spaces of a note, and with the letters that are not used read as digits. */
export const codeHash = (typed: string): string =>
  secretHash(
    typed
      .toUpperCase()
      .replace(/[^0-9A-Z]/g, '')
      .replaceAll('O', '0')
      .replace(/[IL]/g, '1'),
  )
