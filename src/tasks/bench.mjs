// npm run bench -- [--json FILE]: bundles the measurements in tests/speed and runs them in a fresh process.
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
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
  cwd: ROOT,
  stdio: 'inherit',
  env: { ...process.env, TZ: 'UTC', LANG: 'C', LC_ALL: 'C' },
})
if (run.status !== 0) process.exit(run.status ?? 130)

const { buildAll } = await import('./build.mjs')
await buildAll({ onlyStale: true })
// The measuring of the page is a test's business: it runs by itself and says its rows on stdout's last line.
const page = spawnSync(process.execPath, [join(ROOT, 'tests/speed/page-speed.mjs')], {
  cwd: ROOT,
  stdio: ['ignore', 'pipe', 'inherit'],
  encoding: 'utf8',
})
if (page.status !== 0) process.exit(page.status ?? 130)
const rows = JSON.parse(page.stdout.trim().split('\n').at(-1) ?? '[]')
for (const row of rows) {
  process.stdout.write(
    `${row.name.padEnd(42)} ${row.value.toFixed(1)} ms   empty page ${row.baseline.toFixed(1)} ms   ratio ${row.ratio.toFixed(1)}\n`,
  )
}
const at = process.argv.indexOf('--json')
const file = at < 0 ? undefined : process.argv[at + 1]
if (file !== undefined) {
  const report = JSON.parse(readFileSync(file, 'utf8'))
  writeFileSync(file, `${JSON.stringify({ ...report, rows: [...report.rows, ...rows] }, null, 2)}\n`)
}
