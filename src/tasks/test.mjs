// npm test [-- --slow] [--install]: format, lint, types, then every suite; ends with one line over all of them.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { ROOT, requireNode } from './project.mjs'

requireNode()

function options() {
  try {
    const parsed = parseArgs({ options: { slow: { type: 'boolean' }, install: { type: 'boolean' } } })
    return { slow: parsed.values.slow === true, install: parsed.values.install === true }
  } catch (error) {
    process.stderr.write(`${error.message}\nusage: npm test [-- --slow] [--install]\n`)
    process.exit(64)
  }
}
const { slow, install } = options()
const inCi = Boolean(process.env.CI) || install

const { installMissing } = await import('./install-missing.mjs')
installMissing({ development: true })
const { findChromium, HOW_TO_GET_CHROMIUM, installChromium } = await import('./find-chromium.mjs')
const { findPostgres, HOW_TO_GET_POSTGRES, installPostgres } = await import('./find-postgres.mjs')

const total = { passed: 0, failed: 0 }
const environment = {
  ...process.env,
  TZ: 'UTC',
  LANG: 'C',
  LC_ALL: 'C',
  ...(slow ? { UNDERLANE_SLOW: '1' } : {}),
}

/** Runs a package's program from its own package, not through a shell. */
function runTool(script, arguments_) {
  const run = spawnSync(process.execPath, [join(ROOT, 'node_modules', script), ...arguments_], {
    cwd: ROOT,
    stdio: 'inherit',
    env: environment,
  })
  if (run.signal !== null || run.status === 130) process.exit(130)
  return run.status === 0
}

function check(name, ...runs) {
  process.stdout.write(`\n── ${name}\n`)
  const passed = runs.map(([script, ...arguments_]) => runTool(script, arguments_)).every(Boolean)
  total[passed ? 'passed' : 'failed'] += 1
  if (!passed) process.stdout.write(`${name} failed\n`)
}

/** Where it is, or null after saying what to do; its absence is a failure only where nobody is there to read. */
function needed({ find, install: installIt, howToGet }) {
  const present = find()
  if (present !== null) return present
  if (inCi && process.getuid?.() === 0 && installIt()) {
    const installed = find()
    if (installed !== null) return installed
  }
  process.stdout.write(`${howToGet}\n`)
  if (inCi) total.failed += 1
  return null
}

function countReport(file, exitedWell) {
  let report
  try {
    report = JSON.parse(readFileSync(file, 'utf8'))
  } catch {
    process.stdout.write('The suites ended without a report.\n')
    total.failed += 1
    return
  }
  // A file that could not even be loaded has no test of its own to count.
  const brokenFiles = report.testResults.filter(
    (each) => each.status === 'failed' && !each.assertionResults.some((test) => test.status === 'failed'),
  ).length
  const failed = report.numFailedTests + brokenFiles
  total.passed += report.numPassedTests
  // Errors outside any test fail the run without failing a test.
  total.failed += failed === 0 && !exitedWell ? 1 : failed
}

function suites() {
  process.stdout.write(
    `\n── suites${slow ? ', the long forms too' : ''} (seed ${environment.UNDERLANE_SEED ?? 20261124})\n`,
  )
  const chromium = needed({ find: findChromium, install: installChromium, howToGet: HOW_TO_GET_CHROMIUM })
  if (chromium !== null) environment.CHROMIUM_PATH = chromium
  const postgres = needed({ find: findPostgres, install: installPostgres, howToGet: HOW_TO_GET_POSTGRES })
  // Empty means none: the suites look for none of their own accord.
  environment.POSTGRES_BIN = postgres ?? ''
  const folder = join(ROOT, '.cache')
  mkdirSync(folder, { recursive: true })
  const report = join(folder, `suites.${process.pid}.json`)
  const exitedWell = runTool('vitest/vitest.mjs', [
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...(chromium === null ? ['--exclude', 'tests/browser/**'] : []),
  ])
  countReport(report, exitedWell)
  rmSync(report, { force: true })
}

const BIOME = '@biomejs/biome/bin/biome'
const TSC = 'typescript/bin/tsc'
check('format', [BIOME, 'format', '.'])
check('lint', [BIOME, 'check', '--formatter-enabled=false', '.'])
check('types', [TSC, '-p', 'tsconfig.json'], [TSC, '-p', 'shared/tsconfig.json'])
suites()
process.stdout.write(`\n${total.passed} passed, ${total.failed} failed\n`)
process.exit(total.failed === 0 ? 0 : 1)
