import { Secret, TOTP } from 'otpauth'
import { describe, expect, test } from 'vitest'
import { newTotpSecret, totpAddress, totpStep } from '../../src/server/auth/second-factor.ts'

/** RFC 6238, appendix B, SHA-1: seconds since 1970 and the eight digits printed for them. */
const PRINTED = [
  [59, '94287082'],
  [1_111_111_109, '07081804'],
  [1_111_111_111, '14050471'],
  [1_234_567_890, '89005924'],
  [2_000_000_000, '69279037'],
  [20_000_000_000, '65353130'],
] as const
/** The key of that table, twenty bytes of text. */
const KEY = Secret.fromUTF8('12345678901234567890').base32
const at = (seconds: number) => new Date(seconds * 1000)

describe('the codes of an authenticator', () => {
  test.each(PRINTED)('at %i s are as printed in RFC 6238', (seconds, printed) => {
    const eight = new TOTP({ secret: KEY, algorithm: 'SHA1', digits: 8, period: 30 })
    expect(eight.generate({ timestamp: seconds * 1000 })).toBe(printed)
    // Six digits are the last six of the same number (RFC 4226, 5.3).
    expect(totpStep(KEY, printed.slice(2), at(seconds))).toBe(Math.floor(seconds / 30))
  })

  test('are taken one step early or late, and no further off', () => {
    const [seconds, printed] = PRINTED[3]
    const code = printed.slice(2)
    const step = Math.floor(seconds / 30)
    expect(totpStep(KEY, code, at(seconds + 30))).toBe(step)
    expect(totpStep(KEY, code, at(seconds - 30))).toBe(step)
    expect(totpStep(KEY, code, at(seconds + 61))).toBeNull()
    expect(totpStep(KEY, code, at(seconds - 61))).toBeNull()
  })

  test.each(['', '12345', '1234567', 'abcdef', '٠٠٥٩٢٤', '-05924', '005924 x'])('"%s" is none', (code) => {
    expect(totpStep(KEY, code, at(1_234_567_890))).toBeNull()
  })
})

test('a new key has 160 bits, is never the same, and its address says whose it is', () => {
  const keys = Array.from({ length: 50 }, newTotpSecret)
  expect(new Set(keys).size).toBe(50)
  for (const key of keys) expect(key).toMatch(/^[A-Z2-7]{32}$/)
  const [key = ''] = keys
  const address = new URL(totpAddress(key, 'ada'))
  expect(address.protocol).toBe('otpauth:')
  expect(address.searchParams.get('secret')).toBe(key)
  expect(decodeURIComponent(address.pathname)).toContain('Underlane:ada')
})
