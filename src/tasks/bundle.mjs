// Bundles one TypeScript entry into one plain file that Node runs.
import { mkdirSync, renameSync, rmSync, utimesSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { ROOT } from './project.mjs'

// CommonJS packages inside an ES module bundle still call require.
const REQUIRE_BANNER =
  "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);"

/** Written under a temporary name, then renamed: a second program starting meanwhile never reads half a file. */
export async function bundle(entry, output) {
  const { build } = await import('esbuild')
  const started = new Date()
  const target = join(ROOT, output)
  const temporary = `${target}.${process.pid}.part`
  mkdirSync(dirname(target), { recursive: true })
  try {
    await build({
      absWorkingDir: ROOT,
      entryPoints: [entry],
      outfile: temporary,
      bundle: true,
      platform: 'node',
      target: 'node20',
      format: 'esm',
      // Loaded from node_modules: they carry a native binary, or look for one.
      external: ['libsql', 'pg', '@node-rs/argon2'],
      banner: { js: REQUIRE_BANNER },
      logLevel: 'silent',
    })
    // Dated from the start: a source saved while this ran makes the result old, not new.
    utimesSync(temporary, started, started)
    renameSync(temporary, target)
  } finally {
    rmSync(temporary, { force: true })
  }
}
