/** Everything the command line touches of the world, so that it can be run inside a test. */
export type Io = {
  /** Results only. */
  readonly out: (text: string) => void
  /** Progress, refusals and complaints. */
  readonly err: (text: string) => void
  readonly readStdin: () => Promise<string>
  readonly environment: Readonly<Record<string, string | undefined>>
  /** Where relative paths are meant from. */
  readonly workingFolder: string
}
