import { expect, test } from 'vitest'
import { addressesElsewhere } from '../../src/server/addresses-elsewhere.ts'

const at = (address: string, internal: boolean) => ({
  address,
  internal,
  family: 'IPv4' as const,
  netmask: '255.255.255.0',
  mac: '00:00:00:00:00:00',
  cidr: null,
})

test('other machines are told every address of a network, with the port, never the loopback', () => {
  const networks = { lo: [at('127.0.0.1', true)], lan: [at('192.0.2.7', false)], none: undefined }
  expect(addressesElsewhere('http://localhost:4400/', networks)).toEqual(['http://192.0.2.7:4400/'])
  expect(addressesElsewhere('https://localhost:4400/', { lo: [at('127.0.0.1', true)] })).toEqual([])
})
