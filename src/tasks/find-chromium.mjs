// Finds the browser the journeys run in, or says in one line how to get one.
import { spawnSync } from 'node:child_process'
import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'

const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
]
const USUAL_NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']

function runs(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** Path of a Chromium, or null. `$CHROMIUM_PATH` wins and is not second-guessed by another when it is wrong. */
export function findChromium(environment = process.env) {
  const asked = environment.CHROMIUM_PATH
  if (asked) return runs(asked) ? asked : null
  const onPath = (environment.PATH ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
    .flatMap((folder) => USUAL_NAMES.map((name) => join(folder, name)))
  return [...USUAL_PLACES, ...onPath].find(runs) ?? null
}

/** Installs Chromium on Debian and its kin; only when asked to, and only as root. */
export function installChromium() {
  for (const arguments_ of [
    ['update'],
    ['install', '-y', '--no-install-recommends', 'chromium', 'fonts-dejavu-core'],
  ]) {
    const run = spawnSync('apt-get', arguments_, {
      stdio: ['ignore', 2, 2],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    })
    if (run.status !== 0) return false
  }
  return true
}

export const HOW_TO_GET_CHROMIUM =
  'No Chromium found for the browser journeys: install it (Debian: apt-get install chromium fonts-dejavu-core) or set CHROMIUM_PATH.'
