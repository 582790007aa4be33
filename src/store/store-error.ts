export type StoreErrorCode =
  | 'cannot-write-folder'
  | 'not-a-store'
  | 'made-by-a-newer-version'
  | 'busy'
  | 'migration-failed'
  | 'unavailable'
  | 'full'
  | 'not-an-address'
  | 'not-allowed'
  | 'no-such-database'

/** The world's fault, not the user's and not ours: the disk, the file, another program. */
export class StoreError extends Error {
  override readonly name = 'StoreError'
  readonly code: StoreErrorCode
  /** The folder or file it is about. */
  readonly path: string

  constructor(code: StoreErrorCode, path: string, cause: unknown) {
    super(`${code}: ${path}`, { cause })
    this.code = code
    this.path = path
  }
}
