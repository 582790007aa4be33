import { describe, expect, test } from 'vitest'
import { serverConfig } from '../../src/config.ts'

const FOLDERS = { root: '/program', working: '/home/ada' }
type Given = Parameters<typeof serverConfig>
const found = (options: Given[0], environment: Given[1] = {}) => serverConfig(options, environment, FOLDERS)
const accessOf = (...given: Parameters<typeof found>) => {
  const config = found(...given)
  if (!config.ok) throw new Error(config.sentence)
  return config.config.access
}
const PROXY = { PUBLIC_URL: 'https://plans.example', TRUST_PROXY: '1' }
const TLS = { 'tls-cert': 'cert.pem', 'tls-key': 'key.pem' }

describe('on this machine alone', () => {
  test.each([{}, { host: '127.0.0.1' }, { host: '127.9.9.9' }, { host: 'localhost' }, { host: '::1' }])(
    '%o needs no account',
    (options) =>
      expect(accessOf(options)).toMatchObject({ hasAccounts: false, tls: null, isInsecure: false }),
  )
})

describe('anywhere else', () => {
  test.each([
    '0.0.0.0',
    '::',
    '192.168.1.20',
    'plans.example',
    '10.0.0.1',
    '127.0.0.1.example',
    '1127.0.0.1',
  ])('plain http on %s is refused in a sentence that gives the ways out', (host) => {
    const refused = found({ host })
    expect(refused).toMatchObject({ ok: false })
    if (refused.ok) return
    for (const way of ['--tls-cert', '--tls-key', 'PUBLIC_URL', 'TRUST_PROXY', '--insecure-http', 'offline'])
      expect(refused.sentence).toContain(way)
  })

  test('the environment is no way round', () => {
    expect(found({}, { UNDERLANE_HOST: '0.0.0.0' })).toMatchObject({ ok: false })
    expect(found({}, { UNDERLANE_NAMES: 'plans.example' })).toMatchObject({ ok: false })
    expect(accessOf({}, { UNDERLANE_NAMES: 'me.localhost' }).hasAccounts).toBe(false)
  })

  test('with a certificate and its key it is https, with accounts', () => {
    expect(accessOf({ host: '0.0.0.0', ...TLS })).toEqual({
      hasAccounts: true,
      tls: { certFile: '/home/ada/cert.pem', keyFile: '/home/ada/key.pem' },
      publicOrigin: null,
      trustedProxies: 0,
      isInsecure: false,
    })
    expect(found({ host: '0.0.0.0', 'tls-cert': 'cert.pem' })).toMatchObject({ ok: false })
    expect(found({ host: '0.0.0.0', 'tls-key': 'key.pem' })).toMatchObject({ ok: false })
  })

  test('behind a proxy that ends TLS, on this machine or another, with accounts', () => {
    const behind = {
      hasAccounts: true,
      publicOrigin: 'https://plans.example',
      trustedProxies: 1,
      isInsecure: false,
    }
    expect(accessOf({}, PROXY)).toMatchObject(behind)
    expect(accessOf({ host: '0.0.0.0' }, PROXY)).toMatchObject(behind)
    expect(accessOf({}, { ...PROXY, TRUST_PROXY: '2' })).toMatchObject({ trustedProxies: 2 })
    expect(found({}, { PUBLIC_URL: 'https://plans.example' })).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('TRUST_PROXY=1'),
    })
    expect(found({ host: '0.0.0.0' }, { TRUST_PROXY: '1' })).toMatchObject({ ok: false })
  })

  test('with --insecure-http it is plain, with accounts', () => {
    const access = accessOf({ host: '0.0.0.0', 'insecure-http': true })
    expect(access).toMatchObject({ hasAccounts: true, tls: null, isInsecure: true })
    expect(accessOf({ 'insecure-http': true }).hasAccounts).toBe(false)
  })

  test.each([
    'http://plans.example',
    'https://plans.example/app',
    'https://a@plans.example',
    'plans.example',
    'ftp://x',
  ])('the address %s is refused', (address) =>
    expect(found({}, { ...PROXY, PUBLIC_URL: address })).toMatchObject({ ok: false }),
  )

  test.each(['x', '-1', '1.5', 'false', '10'])('TRUST_PROXY=%s is refused', (trust) => {
    expect(found({}, { ...PROXY, TRUST_PROXY: trust })).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('TRUST_PROXY'),
    })
  })
})
