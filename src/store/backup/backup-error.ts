export type BackupErrorCode =
  | 'cannot-read'
  | 'cannot-write'
  | 'no-room'
  | 'no-room-to-unpack'
  | 'folder-not-empty'
  | 'foreign'
  | 'damaged'
  | 'newer'
  | 'not-empty'

const SENTENCES: Readonly<Record<BackupErrorCode, (place: string) => string>> = {
  'cannot-read': (place) => `${place} cannot be read: look at its name and who may read it.`,
  'cannot-write': (place) => `${place} cannot be written: give another file, or make room.`,
  'no-room': (place) => `There is too little room for today's copy in ${place}: make room.`,
  'no-room-to-unpack': (place) =>
    `There is too little room in ${place} to look a backup through: make room there, or set TMPDIR. Nothing was changed.`,
  'folder-not-empty': (place) => `${place} is there already and is not empty: give another folder.`,
  foreign: (place) => `${place} is not a backup of Underlane. Nothing was changed.`,
  damaged: (place) => `${place} is damaged: take another copy of it. Nothing was changed.`,
  newer: (place) => `${place} was made by a newer Underlane: update this one first. Nothing was changed.`,
  'not-empty': (place) =>
    `${place} has data already: restore into an empty folder (--data DIR) or an empty database. Nothing was changed.`,
}

/** A backup that cannot be made or taken back; the world's fault, and said before anything is changed. */
export class BackupError extends Error {
  override readonly name = 'BackupError'
  readonly code: BackupErrorCode
  readonly sentence: string

  constructor(code: BackupErrorCode, place: string, cause: unknown) {
    super(`${code}: ${place}`, { cause })
    this.code = code
    this.sentence = SENTENCES[code](place)
  }
}
