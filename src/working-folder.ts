import { relative } from 'node:path'

type Environment = Readonly<Record<string, string | undefined>>

/**
 * The folder that relative paths of the person typing are meant from. `npm run` changes to the project's root first and
 * leaves the folder it was called from in INIT_CWD; that name is believed only when this very script was asked for, since
 * programs started by other scripts inherit it.
 */
export function workingFolder(
  environment: Environment,
  current: string,
  root: string,
  script: string,
): string {
  const throughNpm = environment.npm_lifecycle_event === script && relative(current, root) === ''
  return throughNpm ? (environment.INIT_CWD ?? current) : current
}
