/** The command line itself cannot be meant: exit 64. */
export class UsageError extends Error {
  override readonly name = 'UsageError'
}
