import type { Context } from 'hono'
import type { AppEnv } from '../api-error.ts'

const LONGEST_ADDRESS = 64

/**
 * Where a request comes from. Behind proxies each adds the address it was asked from at the end; only what our own
 * proxies have added is true, anything before may have been written by the asker.
 */
export function clientAddress(c: Context<AppEnv>, trustedProxies: number): string {
  const nearest = c.env?.incoming?.socket.remoteAddress ?? 'unknown'
  if (trustedProxies === 0) return nearest.replace(/^::ffff:/, '')
  const passedOn = (c.req.header('X-Forwarded-For') ?? '').split(',').map((each) => each.trim())
  const told = passedOn.at(-trustedProxies) ?? ''
  return (/^[0-9a-f.:]+$/i.test(told) ? told : nearest).replace(/^::ffff:/, '').slice(0, LONGEST_ADDRESS)
}
