import { networkInterfaces } from 'node:os'

/** How other machines reach what listens everywhere here: by this machine's own addresses on its networks. */
export function addressesElsewhere(
  address: string,
  networks: ReturnType<typeof networkInterfaces> = networkInterfaces(),
): readonly string[] {
  return Object.values(networks)
    .flatMap((found) => found ?? [])
    .filter(({ internal, family, address: own }) => !internal && family === 'IPv4' && own !== '')
    .map(({ address: own }) => {
      const url = new URL(address)
      url.hostname = own
      return url.href
    })
}
