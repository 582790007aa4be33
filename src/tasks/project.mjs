// Where the project lies and which Node runs it: what every task asks first.
import { fileURLToPath } from 'node:url'

export const ROOT = fileURLToPath(new URL('../../', import.meta.url))

/** One plain sentence when this Node is too old, else null. Kept free of anything an old Node could not read. */
export function nodeTooOld(version = process.versions.node) {
  const [major = 0, minor = 0] = version.split('.').map(Number)
  if (major > 20 || (major === 20 && minor >= 19)) return null
  return `Underlane needs Node 20.19 or newer and this is Node ${version}: install a newer one from https://nodejs.org and try again.`
}

/** Ends the program when Node is too old. */
export function requireNode() {
  const sentence = nodeTooOld()
  if (sentence === null) return
  process.stderr.write(`${sentence}\n`)
  process.exit(3)
}
