import { tmpdir } from 'node:os'
import { TOTP } from 'otpauth'
import { z } from 'zod'
import { newCodeAnswer, type RoleName } from '../../shared/contracts/access.ts'
import { buildApp } from '../../src/server/app.ts'
import { firstOwnerCode } from '../../src/server/auth/first-owner.ts'
import { argon2Hashing } from '../../src/server/auth/passwords.ts'
import type { OpenStore } from '../../src/store/open-store.ts'

export const PASSWORD = 'mole hole pole bowl'
/** The real hash at a price a suite can pay hundreds of times. */
export const CHEAP = argon2Hashing({ memoryKib: 8, passes: 1 })

export type Sent = { readonly status: number; readonly body: unknown; readonly headers: Headers }

/** A browser or a script: keeps the cookie it is given, as a browser does. */
export class Client {
  readonly #app: ReturnType<typeof buildApp>
  cookie: string | null = null
  readonly headers: Record<string, string>
  constructor(app: ReturnType<typeof buildApp>, headers: Record<string, string> = {}) {
    this.#app = app
    this.headers = headers
  }

  async send(
    method: string,
    path: string,
    body?: unknown,
    headers: Record<string, string> = {},
  ): Promise<Sent> {
    const answer = await this.#app.request(path, {
      method,
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      headers: {
        ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
        ...(this.cookie === null ? {} : { Cookie: this.cookie }),
        ...this.headers,
        ...headers,
      },
    })
    const given = answer.headers.get('Set-Cookie')
    if (given !== null) {
      const [pair = ''] = given.split(';')
      this.cookie = pair.endsWith('=') ? null : pair
    }
    const text = await answer.text()
    return { status: answer.status, body: text === '' ? null : JSON.parse(text), headers: answer.headers }
  }

  get = (path: string) => this.send('GET', path)
  post = (path: string, body: unknown) => this.send('POST', path, body)
}

export type Office = {
  readonly store: OpenStore
  readonly app: ReturnType<typeof buildApp>
  readonly logged: string[]
  /** What its clock says. */
  at: Date
  stranger(headers?: Record<string, string>): Client
  /** The first owner, with a second factor. */
  owner(): Promise<Client>
  /** Lets somebody in and signs them in. */
  member(owner: Client, role: RoleName, login: string, person?: string): Promise<Client>
}

export const codeOf = (secret: string, at: Date): string =>
  new TOTP({ secret }).generate({ timestamp: at.getTime() })

const secretAnswer = z.object({ secret: z.string() })

/** Sets a second factor; the key it was given. */
export async function withFactor(client: Client, office: Office): Promise<string> {
  const begun = await client.post('/api/session/second-factor', { password: PASSWORD })
  const { secret } = secretAnswer.parse(begun.body)
  const code = codeOf(secret, office.at)
  const set = await client.send('PUT', '/api/session/second-factor', { password: PASSWORD, secret, code })
  if (set.status !== 200) throw new Error(JSON.stringify(set.body))
  return secret
}

/** A server of an office over a store, in process. */
export function officeOver(store: OpenStore, cookies: 'secure' | 'plain' = 'secure', proxies = 0): Office {
  const logged: string[] = []
  const office: Office = {
    store,
    logged,
    at: new Date('2026-03-02T09:00:00Z'),
    app: buildApp({
      store,
      webRoot: tmpdir(),
      hosts: [],
      now: () => office.at,
      log: (line) => logged.push(line),
      accounts: { cookies, hashing: CHEAP },
      trustedProxies: proxies,
    }),
    stranger: (headers) => new Client(office.app, headers),
    async owner() {
      const client = office.stranger()
      const code = await firstOwnerCode(store.access, office.at)
      const made = await client.post('/api/session/code', {
        code,
        password: PASSWORD,
        login: 'olga',
        name: 'Olga',
      })
      if (made.status !== 200) throw new Error(JSON.stringify(made.body))
      await withFactor(client, office)
      return client
    },
    async member(owner, role, login, person) {
      const about = { login, name: login, role, ...(person === undefined ? {} : { person }) }
      const { code } = newCodeAnswer.parse((await owner.post('/api/accounts', about)).body)
      const client = office.stranger()
      const made = await client.post('/api/session/code', { code, password: PASSWORD })
      if (made.status !== 200) throw new Error(JSON.stringify(made.body))
      return client
    },
  }
  return office
}
