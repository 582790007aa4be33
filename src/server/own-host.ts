import type { Context, MiddlewareHandler } from 'hono'
import { type AppEnv, refuse } from './api-error.ts'

const SAFE_METHODS = ['GET', 'HEAD', 'OPTIONS']

/** The name without its port, small letters, no brackets; null when it is not a host at all. */
function hostName(host: string): string | null {
  const url = URL.canParse(`http://${host}`) ? new URL(`http://${host}`) : null
  return url === null || url.host === '' || url.pathname !== '/' ? null : url.hostname.replace(/^\[|\]$/g, '')
}

const isLoopback = (name: string): boolean =>
  name === 'localhost' || name.endsWith('.localhost') || name === '::1' || /^127(\.\d{1,3}){3}$/.test(name)

const isAddress = (name: string): boolean => name.includes(':') || /^\d{1,3}(\.\d{1,3}){3}$/.test(name)

/** Listening on every address: then each address of this machine is its own name. */
export const EVERYWHERE = ['0.0.0.0', '::']

export type HostRule = (host: string) => boolean

/**
 * The names this server answers to: this machine's own, and those it was told. A page elsewhere can point a name of its
 * own at this machine and so get round the browser's wall between origins; it cannot choose our name.
 */
export function hostRule(told: readonly string[]): HostRule {
  const names = told.map((host) => host.toLowerCase())
  const everywhere = names.some((name) => EVERYWHERE.includes(name))
  return (host) => {
    const name = hostName(host)
    if (name === null) return false
    return isLoopback(name) || names.includes(name) || (everywhere && isAddress(name))
  }
}

const hostOf = (c: Context<AppEnv>): string => c.req.header('Host') ?? new URL(c.req.url).host

/**
 * Whether a change comes from a page of ours, or from no page at all. A page served by another local port while
 * developing is passed on by a proxy: the browser itself then vouches for "same-origin".
 */
function isOwnPage(c: Context<AppEnv>, isOwnHost: HostRule, publicOrigin: string | null): boolean {
  const site = c.req.header('Sec-Fetch-Site')
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return false
  const origin = c.req.header('Origin')
  if (origin === undefined) return true
  // Behind a proxy the name the browser asked for may not be the one we are asked by.
  if (publicOrigin !== null && origin === publicOrigin) return true
  if (!URL.canParse(origin)) return false
  const { host } = new URL(origin)
  return host === hostOf(c).toLowerCase() || (site === 'same-origin' && isOwnHost(host))
}

/** Turns away requests to a name that is not ours, and changes asked for by a page that is not ours. */
export const ownHostOnly = (
  isOwnHost: HostRule,
  publicOrigin: string | null = null,
): MiddlewareHandler<AppEnv> => {
  return async (c, next) => {
    if (!isOwnHost(hostOf(c))) return refuse(c, 403, 'foreign-host')
    if (!SAFE_METHODS.includes(c.req.method) && !isOwnPage(c, isOwnHost, publicOrigin)) {
      return refuse(c, 403, 'foreign-origin')
    }
    await next()
  }
}
