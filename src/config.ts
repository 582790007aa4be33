import { join, resolve } from 'node:path'
import { z } from 'zod'
import { accessOf, type ServerAccess } from './config-access.ts'

type Environment = Readonly<Record<string, string | undefined>>

const DEFAULT_PORT = 4270
/** Only this machine, until somebody asks for more: then people sign in. */
const DEFAULT_HOST = '127.0.0.1'

const port = z
  .string()
  .regex(/^\d{1,5}$/)
  .transform(Number)
  .refine((value) => value <= 65535)

/** Empty means unset, as a shell leaves it. */
const unset = (value: string | undefined) => (value === '' ? undefined : value)

export type ServerConfig = {
  readonly port: number
  readonly host: string
  /** Names it is reached by besides `host` and this machine's own, as behind a proxy. */
  readonly names: readonly string[]
  readonly dataFolder: string
  /** Where a PostgreSQL database is used instead of the folder; null otherwise. */
  readonly databaseUrl: string | null
  readonly demo: boolean
  readonly access: ServerAccess
  readonly webRoot: string
  readonly demoFolder: string
}

export type ServerOptions = {
  readonly port?: string | undefined
  readonly host?: string | undefined
  readonly data?: string | undefined
  readonly empty?: boolean | undefined
  readonly 'insecure-http'?: boolean | undefined
  readonly 'tls-cert'?: string | undefined
  readonly 'tls-key'?: string | undefined
}

/** The environment and the options typed, parsed once; options win. A sentence when one of them cannot be meant. */
export function serverConfig(
  options: ServerOptions,
  environment: Environment,
  folders: { readonly root: string; readonly working: string },
): { readonly ok: true; readonly config: ServerConfig } | { readonly ok: false; readonly sentence: string } {
  const portText = options.port ?? unset(environment.PORT) ?? String(DEFAULT_PORT)
  const parsedPort = port.safeParse(portText)
  if (!parsedPort.success) {
    const where = options.port === undefined ? 'PORT' : '--port'
    return { ok: false, sentence: `${where} must be a whole number from 0 to 65535, not "${portText}".` }
  }
  const host = options.host ?? unset(environment.UNDERLANE_HOST) ?? DEFAULT_HOST
  const names = (unset(environment.UNDERLANE_NAMES) ?? '').split(/[\s,]+/).filter((name) => name !== '')
  const access = accessOf(
    {
      host,
      names,
      insecureHttp: options['insecure-http'] === true,
      tlsCert: options['tls-cert'] ?? null,
      tlsKey: options['tls-key'] ?? null,
      publicUrl: unset(environment.PUBLIC_URL) ?? null,
      trustProxy: unset(environment.TRUST_PROXY) ?? null,
    },
    folders.working,
  )
  if (!access.ok) return access
  const data = options.data ?? unset(environment.UNDERLANE_DATA)
  return {
    ok: true,
    config: {
      port: parsedPort.data,
      host,
      names,
      access: access.access,
      dataFolder: data === undefined ? join(folders.root, 'data') : resolve(folders.working, data),
      // A folder named on the command line is meant, whatever the environment says.
      databaseUrl: options.data === undefined ? (unset(environment.DATABASE_URL) ?? null) : null,
      demo: options.empty !== true,
      webRoot: join(folders.root, 'dist', 'web'),
      demoFolder: join(folders.root, 'src', 'store', 'demo'),
    },
  }
}
