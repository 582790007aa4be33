import { isIP } from 'node:net'
import { resolve } from 'node:path'

/** How others reach the server, and so whether people sign in. */
export type ServerAccess = {
  /** False only where nothing but this machine is answered, under no name but its own. */
  readonly hasAccounts: boolean
  /** Read when the server starts; null: plain http. */
  readonly tls: { readonly certFile: string; readonly keyFile: string } | null
  /** https://plans.example, where a proxy of ours ends TLS. */
  readonly publicOrigin: string | null
  readonly trustedProxies: number
  /** Somebody has said that plain http over a network is meant. */
  readonly isInsecure: boolean
}

type Told = {
  readonly host: string
  readonly names: readonly string[]
  readonly insecureHttp: boolean
  readonly tlsCert: string | null
  readonly tlsKey: string | null
  readonly publicUrl: string | null
  readonly trustProxy: string | null
}

type Found =
  | { readonly ok: true; readonly access: ServerAccess }
  | { readonly ok: false; readonly sentence: string }

const no = (sentence: string): Found => ({ ok: false, sentence })

const isLoopback = (host: string): boolean =>
  host === 'localhost' || host === '::1' || (isIP(host) === 4 && host.startsWith('127.'))

const LOCAL_NAME = /(^|\.)localhost$|^127(\.\d{1,3}){3}$|^::1$/

/** The origin of an address that is nothing more than one; null when it is something else. */
function originOf(publicUrl: string): string | null {
  if (!URL.canParse(publicUrl)) return null
  const { protocol, origin, pathname, search, hash, username } = new URL(publicUrl)
  const isBare = pathname === '/' && search === '' && hash === '' && username === ''
  return isBare && (protocol === 'https:' || protocol === 'http:') ? origin : null
}

/** "1", "2" …: so many proxies of ours in a row; a word for yes is one. */
function proxiesOf(trustProxy: string | null): number | null {
  if (trustProxy === null) return 0
  if (/^(true|yes)$/i.test(trustProxy)) return 1
  return /^[0-9]$/.test(trustProxy) ? Number(trustProxy) : null
}

const WAYS_OUT =
  'give --tls-cert FILE and --tls-key FILE, or stand behind a proxy that ends TLS (PUBLIC_URL=https://NAME and TRUST_PROXY=1), or, in a network you trust, say --insecure-http: phones then get no offline app.'

/**
 * What was told, made sense of. Passwords and plans cross a network only under TLS, unless somebody says that they may
 * cross it in the open.
 */
export function accessOf(told: Told, workingFolder: string): Found {
  const { tlsCert, tlsKey, insecureHttp } = told
  if ((tlsCert === null) !== (tlsKey === null)) {
    return no('--tls-cert and --tls-key go together: a certificate and its key.')
  }
  const trustedProxies = proxiesOf(told.trustProxy)
  if (trustedProxies === null) {
    return no(`TRUST_PROXY is how many proxies stand before the server, such as 1, not "${told.trustProxy}".`)
  }
  const publicOrigin = told.publicUrl === null ? null : originOf(told.publicUrl)
  if (told.publicUrl !== null && publicOrigin === null) {
    return no(
      `PUBLIC_URL must be an address without a path, such as https://plans.example, not "${told.publicUrl}".`,
    )
  }
  const isPublicSecure = publicOrigin?.startsWith('https:') ?? false
  const hasProxy = isPublicSecure && trustedProxies > 0
  if (publicOrigin !== null && !hasProxy && !insecureHttp && tlsCert === null) {
    return no(
      isPublicSecure
        ? 'PUBLIC_URL names the proxy that ends TLS; say with TRUST_PROXY=1 that it is yours, for it tells who asks.'
        : `PUBLIC_URL is plain http: ${WAYS_OUT}`,
    )
  }
  const isLocal = isLoopback(told.host)
  if (!isLocal && tlsCert === null && !hasProxy && !insecureHttp) {
    return no(`Others would reach ${told.host} in the open: ${WAYS_OUT}`)
  }
  const hasOtherNames = told.names.some((name) => !LOCAL_NAME.test(name.toLowerCase()))
  const hasAccounts = !isLocal || publicOrigin !== null || hasOtherNames
  const tls =
    tlsCert === null || tlsKey === null
      ? null
      : { certFile: resolve(workingFolder, tlsCert), keyFile: resolve(workingFolder, tlsKey) }
  // Under a name of its own on plain http of this machine there is a proxy we were not told of.
  const isInsecure = hasAccounts && tls === null && !hasProxy
  if (isInsecure && !insecureHttp) {
    return no(`UNDERLANE_NAMES names what others reach the server by: ${WAYS_OUT}`)
  }
  return { ok: true, access: { hasAccounts, tls, publicOrigin, trustedProxies, isInsecure } }
}
