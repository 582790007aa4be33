import { signal } from '@preact/signals'
import type { JsonObject } from '../state/json.ts'
import type { Change } from './crossing-requests.ts'
import { type BadFile, type FoundCrossing, readFiles } from './import-files.ts'
import { newId } from './new-id.ts'
import { SAVED } from './saved-words.ts'
import type { SentOrWaiting } from './send-or-queue.ts'

/** What has come of the files dropped or chosen last. */
export type BroughtIn =
  | { readonly state: 'saving'; readonly done: number; readonly all: number }
  | {
      readonly state: 'done'
      readonly saved: number
      readonly waiting: number
      readonly bad: readonly BadFile[]
      /** Told on the page that the one good file is opened on. */
      readonly isCarried: boolean
    }

export const broughtIn = signal<BroughtIn | null>(null)

/** Another page has come: what was said on the one before is past, unless it was said for this one. */
export function arriveWithReport(): void {
  const report = broughtIn.peek()
  if (report?.state !== 'done') return
  broughtIn.value = report.isCarried ? { ...report, isCarried: false } : null
}

export type ImportDoors = {
  readonly open: (document: JsonObject) => void
  readonly save: (change: Change) => Promise<SentOrWaiting>
  /** Told when the list has something new. */
  readonly whenSaved: () => void
}

type Tally = { saved: number; waiting: number; bad: BadFile[] }

const sentenceOf = (sent: SentOrWaiting, name: string): string => {
  if (sent.state === 'refused') return sent.issues[0]?.text ?? SAVED.notDone.refused(name)
  return SAVED.notDone.trouble(name)
}

async function saveOne({ from, document }: FoundCrossing, doors: ImportDoors, tally: Tally): Promise<void> {
  const sent = await doors.save({ id: newId(), document, from: null, requestKey: newId() })
  if (sent.state === 'done') tally.saved += 1
  else if (sent.state === 'waiting' && sent.isKept) tally.waiting += 1
  else {
    const name = typeof document.name === 'string' ? document.name : from
    tally.bad.push({ from, document, sentence: sentenceOf(sent, name) })
  }
}

/** One crossing is opened, many are saved; what cannot be brought in is named, and stops nothing. */
export async function bringIn(files: readonly File[], doors: ImportDoors): Promise<void> {
  if (files.length === 0 || broughtIn.peek()?.state === 'saving') return
  const { found, bad } = await readFiles(files)
  const [only] = found
  if (only !== undefined && found.length === 1) {
    broughtIn.value = bad.length === 0 ? null : { state: 'done', saved: 0, waiting: 0, bad, isCarried: true }
    doors.open(only.document)
    return
  }
  const tally: Tally = { saved: 0, waiting: 0, bad: [...bad] }
  for (const [done, one] of found.entries()) {
    broughtIn.value = { state: 'saving', done, all: found.length }
    await saveOne(one, doors, tally)
  }
  broughtIn.value = { state: 'done', ...tally, isCarried: false }
  if (tally.saved + tally.waiting > 0) doors.whenSaved()
}
