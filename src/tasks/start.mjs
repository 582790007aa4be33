// npm start [-- --port N] [--host H] [--data DIR] [--empty]: installs what is missing, builds what is old, serves.

import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { ROOT, requireNode } from './project.mjs'

requireNode()
const { installMissing } = await import('./install-missing.mjs')
installMissing({ development: false })

const { buildAll } = await import('./build.mjs')
try {
  await buildAll({ onlyStale: true })
} catch (error) {
  process.stderr.write(`The build failed: ${error.message}\n`)
  process.exit(3)
}

// The server reads its options from this program's own arguments and ends it by itself on Ctrl-C.
await import(pathToFileURL(join(ROOT, 'dist/server.mjs')).href)
