import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { build } from 'esbuild'

const ROOT = new URL('../../', import.meta.url).pathname

/** The program that writes and says each change once it is acknowledged, bundled; its file, and how to take it away. */
export async function writerProgram(): Promise<{ readonly file: string; remove(): void }> {
  // Inside the project, where the driver with its native part is found.
  const file = join(ROOT, 'dist', `store-writer-${process.pid}.mjs`)
  mkdirSync(join(ROOT, 'dist'), { recursive: true })
  await build({
    entryPoints: [join(ROOT, 'tests', 'store', 'store-writer.ts')],
    outfile: file,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    external: ['libsql', 'pg'],
    logLevel: 'silent',
  })
  return { file, remove: () => rmSync(file, { force: true }) }
}
