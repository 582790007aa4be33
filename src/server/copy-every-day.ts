import { BackupError } from '../store/backup/backup-error.ts'
import { type CopyPlace, makeDailyCopy } from '../store/backup/daily-copy.ts'
import { StoreError } from '../store/store-error.ts'
import { storeSentence } from '../store/store-sentence.ts'

/** Not at once: whoever starts the server wants to see the page first. */
const FIRST_MS = 60_000
const AGAIN_MS = 60 * 60_000

export type CopyEveryDay = {
  /** Looks whether today has its copy; settles when it has, or when it is said why not. */
  look(): Promise<void>
  /** No more looks; settles behind a copy that is being made. */
  stop(): Promise<void>
}

/** What a person can mend is said in a sentence, anything else with where it happened; the server goes on serving. */
function complaint(error: unknown): string {
  if (error instanceof BackupError) return error.sentence
  if (error instanceof StoreError) return storeSentence(error)
  return error instanceof Error ? (error.stack ?? error.message) : String(error)
}

/** Makes a copy of the store each day while the server runs. */
export function copyEveryDay(place: CopyPlace, now: () => Date, log: (line: string) => void): CopyEveryDay {
  let underWay: Promise<void> | null = null
  const look = (): Promise<void> => {
    underWay ??= makeDailyCopy(place, now())
      .then(
        () => undefined,
        (error: unknown) => log(`No copy of the store was made today. ${complaint(error)}`),
      )
      .finally(() => {
        underWay = null
      })
    return underWay
  }
  let again: NodeJS.Timeout | undefined
  const first = setTimeout(() => {
    void look()
    again = setInterval(() => void look(), AGAIN_MS)
    again.unref()
  }, FIRST_MS)
  first.unref()
  return {
    look,
    async stop() {
      clearTimeout(first)
      clearInterval(again)
      await underWay
    },
  }
}
