#!/usr/bin/env node
// The command line: runs dist/cli.mjs, bundling it first when it is missing or older than the sources.
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { ROOT, requireNode } from '../tasks/project.mjs'

requireNode()
const { isStale, SOURCES } = await import('../tasks/freshness.mjs')
if (isStale('dist/cli.mjs', SOURCES.program)) {
  try {
    const { bundle } = await import('../tasks/bundle.mjs')
    await bundle('src/cli/main.ts', 'dist/cli.mjs')
  } catch (error) {
    const missing = error.code === 'ERR_MODULE_NOT_FOUND'
    process.stderr.write(
      missing
        ? 'Packages are missing: run `npm ci` in the project first.\n'
        : `The command line could not be built: ${error.message}\n`,
    )
    process.exit(3)
  }
}
await import(pathToFileURL(join(ROOT, 'dist/cli.mjs')).href)
