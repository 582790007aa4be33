import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder with package.json above this file, whether it runs bundled from dist/ or from src/. */
export function projectRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url))
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder)
    if (above === folder) throw new Error('package.json is missing: Underlane runs from its own folder')
    folder = above
  }
  return folder
}
