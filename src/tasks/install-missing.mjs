// Installs packages only when one that package.json asks for is absent or of another version than the lock file's.
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { ROOT } from './project.mjs'

function installedVersion(name) {
  try {
    return JSON.parse(readFileSync(join(ROOT, 'node_modules', name, 'package.json'), 'utf8')).version
  } catch (error) {
    if (error.code === 'ENOENT' || error.code === 'ENOTDIR') return null
    throw error
  }
}

/** Names of direct packages that are not there as the lock file wants them. */
export function missingPackages({ development }) {
  const lock = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8'))
  const wanted = lock.packages['']
  const names = Object.keys({ ...wanted.dependencies, ...(development ? wanted.devDependencies : {}) })
  return names.filter((name) => installedVersion(name) !== lock.packages[`node_modules/${name}`]?.version)
}

/** Runs `npm ci` when something is missing; ends the program with a plain sentence when that fails. */
export function installMissing({ development }) {
  const missing = missingPackages({ development })
  if (missing.length === 0) return
  process.stderr.write(`Installing packages (${missing.length} missing) …\n`)
  // --include=dev: NODE_ENV=production must not leave out what a build needs.
  const arguments_ = ['ci', '--include=dev', '--no-audit', '--no-fund']
  const npmScript = process.env.npm_execpath
  const run = npmScript?.endsWith('.js')
    ? spawnSync(process.execPath, [npmScript, ...arguments_], { cwd: ROOT, stdio: ['ignore', 2, 2] })
    : spawnSync('npm', arguments_, {
        cwd: ROOT,
        stdio: ['ignore', 2, 2],
        shell: process.platform === 'win32',
      })
  if (run.status === 0) return
  process.stderr.write(
    'The packages could not be installed: check the network and run `npm ci` to see why.\n',
  )
  process.exit(3)
}
