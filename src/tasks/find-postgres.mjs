// Finds the PostgreSQL the store's suite starts for itself, or says in one line how to get one.
import { spawnSync } from 'node:child_process'
import { accessSync, constants, readdirSync } from 'node:fs'
import { delimiter, join } from 'node:path'

/** Folders with one folder a version inside. */
const VERSIONED = ['/usr/lib/postgresql', '/usr/local/pgsql', '/Library/PostgreSQL']
const KEGS = ['/opt/homebrew/opt', '/usr/local/opt']

function hasServer(folder) {
  try {
    for (const name of ['initdb', 'postgres']) accessSync(join(folder, name), constants.X_OK)
    return true
  } catch {
    return false
  }
}

function foldersIn(folder) {
  try {
    return readdirSync(folder)
  } catch {
    return []
  }
}

const newestFirst = (names) => names.sort((a, b) => Number.parseFloat(b) - Number.parseFloat(a))

/** The folder of a PostgreSQL's programs, or null. `$POSTGRES_BIN` wins and is not second-guessed. */
export function findPostgres(environment = process.env) {
  const asked = environment.POSTGRES_BIN
  if (asked) return hasServer(asked) ? asked : null
  const onPath = (environment.PATH ?? '').split(delimiter).filter((folder) => folder !== '')
  const versioned = VERSIONED.flatMap((folder) =>
    newestFirst(foldersIn(folder)).map((version) => join(folder, version, 'bin')),
  )
  const kegs = KEGS.flatMap((folder) =>
    foldersIn(folder)
      .filter((name) => name.startsWith('postgresql'))
      .map((name) => join(folder, name, 'bin')),
  )
  return [...onPath, ...versioned, ...kegs].find(hasServer) ?? null
}

/** Installs PostgreSQL on Debian and its kin; only when asked to, and only as root. */
export function installPostgres() {
  for (const arguments_ of [['update'], ['install', '-y', '--no-install-recommends', 'postgresql']]) {
    const run = spawnSync('apt-get', arguments_, {
      stdio: ['ignore', 2, 2],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    })
    if (run.status !== 0) return false
  }
  return true
}

export const HOW_TO_GET_POSTGRES =
  'No PostgreSQL found for the store: install it (Debian: apt-get install postgresql) or set POSTGRES_BIN; its suites ran on SQLite only.'
