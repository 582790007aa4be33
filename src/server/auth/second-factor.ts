import { Secret, TOTP } from 'otpauth'

/** RFC 6238 as every authenticator knows it: SHA-1, six digits, 30 s. */
const PERIOD_S = 30
const SECRET_BYTES = 20
/** A clock may be one step off either way. */
const STEPS_OFF = 1

const totpOf = (secret: string, label = ''): TOTP =>
  new TOTP({
    issuer: 'Underlane',
    label,
    algorithm: 'SHA1',
    digits: 6,
    period: PERIOD_S,
    secret: Secret.fromBase32(secret),
  })

export const newTotpSecret = (): string => new Secret({ size: SECRET_BYTES }).base32

/** The address an authenticator reads. */
export const totpAddress = (secret: string, login: string): string => totpOf(secret, login).toString()

/** The step of the clock the code is of, or null when it is of none that is near enough. */
export function totpStep(secret: string, code: string, at: Date): number | null {
  const token = code.replace(/\s/g, '')
  if (!/^\d{6}$/.test(token)) return null
  const timestamp = at.getTime()
  const delta = totpOf(secret).validate({ token, timestamp, window: STEPS_OFF })
  return delta === null ? null : Math.floor(timestamp / 1000 / PERIOD_S) + delta
}
