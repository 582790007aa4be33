// npm run bench -- [--json FILE]: bundles the measurements in tests/speed and runs them in a fresh process.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { ROOT, requireNode } from './project.mjs'

requireNode()
const ENTRY = 'tests/speed/bench.ts'
if (!existsSync(join(ROOT, ENTRY))) {
  process.stderr.write(`There is nothing to measure yet: ${ENTRY} does not exist.\n`)
  process.exit(3)
}

const { installMissing } = await import('./install-missing.mjs')
installMissing({ development: false })
const { bundle } = await import('./bundle.mjs')
await bundle(ENTRY, 'dist/bench.mjs')
const run = spawnSync(process.execPath, [join(ROOT, 'dist/bench.mjs'), ...process.argv.slice(2)], {
  stdio: 'inherit',
  env: { ...process.env, TZ: 'UTC', LANG: 'C', LC_ALL: 'C' },
})
process.exit(run.status ?? 130)
