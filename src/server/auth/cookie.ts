import type { Context } from 'hono'
import { deleteCookie, getCookie, setCookie } from 'hono/cookie'
import type { AppEnv } from '../api-error.ts'
import { LONGEST_SESSION_MS } from './session-life.ts'

/** 'secure': over https. 'plain' only where whoever runs the server has said that plain http is meant. */
export type CookieKind = 'secure' | 'plain'

const PLAIN_NAME = 'underlane-session'
const SECURE_NAME = 'underlane'

/** `__Host-`: a browser takes it over https only, for this very host, and no other host can put one in its place. */
export const sessionCookie = (c: Context<AppEnv>, kind: CookieKind): string | undefined =>
  kind === 'secure' ? getCookie(c, SECURE_NAME, 'host') : getCookie(c, PLAIN_NAME)

export function giveSessionCookie(c: Context<AppEnv>, kind: CookieKind, token: string): void {
  const shared = {
    httpOnly: true,
    sameSite: 'Lax',
    path: '/',
    maxAge: Math.floor(LONGEST_SESSION_MS / 1000),
  } as const
  if (kind === 'secure') setCookie(c, SECURE_NAME, token, { ...shared, secure: true, prefix: 'host' })
  else setCookie(c, PLAIN_NAME, token, shared)
}

export function takeSessionCookie(c: Context<AppEnv>, kind: CookieKind): void {
  if (kind === 'secure') deleteCookie(c, SECURE_NAME, { path: '/', secure: true, prefix: 'host' })
  else deleteCookie(c, PLAIN_NAME, { path: '/' })
}
