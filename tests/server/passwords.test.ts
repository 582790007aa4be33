import { describe, expect, test } from 'vitest'
import { argon2Hashing, passwordFault } from '../../src/server/auth/passwords.ts'
import {
  codeHash,
  newApiToken,
  newLinkToken,
  newOneTimeCode,
  newSessionToken,
} from '../../src/server/auth/secrets.ts'

const ABOUT = ['maria.lopez', 'María López']

describe('a password', () => {
  test.each([
    'mole hole pole bowl',
    'Unter der Straße 7',
    'ñandú-corre-lejos',
    'x7#kP0qz!vLm',
    '地下の土竜は静かに掘る夜',
  ])('%s will do', (password) => expect(passwordFault(password, ABOUT)).toBeNull())

  test.each(['', 'short', 'elevenchars', '             1'.slice(0, 11)])('"%s" is too short', (password) => {
    expect(passwordFault(password, ABOUT)).toBe('password-short')
  })

  test.each([
    'passwordpassword',
    'Password1234',
    'P@ssw0rd!!!!',
    'letmein12345',
    'Iloveyou2024!!',
    'qwertyuiop12',
    '123456789012',
    'aaaaaaaaaaaa',
    'abababababab',
    'abcabcabcabc',
    'abcdefghijklm',
    'mnopqrstuvwxyz',
    'Contraseña1234',
    'correct horse battery staple',
    'underground123',
    'Underlane 2026!',
    'maria.lopez2026',
    'MariaLopez12345',
  ])('%s is one that others try first', (password) => {
    expect(passwordFault(password, ABOUT)).toBe('password-common')
  })
})

describe('its hash', () => {
  test('is argon2id at the usual cost, salted, and fits no other password', async () => {
    const { hash, verify } = argon2Hashing()
    const [one, two] = await Promise.all([hash('mole hole pole bowl'), hash('mole hole pole bowl')])
    expect(one).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/)
    expect(one).not.toBe(two)
    expect(await verify(one, 'mole hole pole bowl')).toBe(true)
    expect(await verify(one, 'mole hole pole bowI')).toBe(false)
  })

  test('is the same however a keyboard composes a letter', async () => {
    const { hash, verify } = argon2Hashing({ memoryKib: 8, passes: 1 })
    expect(await verify(await hash('ma\u0301s de doce letras'), 'm\u00e1s de doce letras')).toBe(true)
  })
})

test('secrets are as long as they are said to be, and never the same', () => {
  const many = <Made>(make: () => Made) => Array.from({ length: 200 }, make)
  for (const make of [newSessionToken, newLinkToken, newApiToken, newOneTimeCode]) {
    expect(new Set(many(make)).size).toBe(200)
  }
  expect(Buffer.from(newSessionToken(), 'base64url')).toHaveLength(32)
  expect(Buffer.from(newLinkToken(), 'base64url')).toHaveLength(16)
  expect(newOneTimeCode()).toMatch(/^([0-9A-HJKMNP-TV-Z]{4}-){3}[0-9A-HJKMNP-TV-Z]{4}$/)
  expect(codeHash('10AB-CDEF-0000-1111')).toBe(codeHash(' loab cdef OOOO IiLl'))
})
