import { type ReadonlySignal, signal } from '@preact/signals'
import { z } from 'zod'
import { type SignOffFile, signOffFile } from '../../shared/contracts/sign-off.ts'
import { goesNow, worksAs } from '../access/session-state.ts'
import { newId } from '../saved/new-id.ts'
import { recall, remember } from '../state/browser-memory.ts'
import { fetchSigned, type Listed, sendPhoto, sendSigned } from './site-requests.ts'

const keptEntry = z.object({
  id: z.string(),
  file: signOffFile,
  isSent: z.boolean(),
  /** Whoever was signed in here; null or absent: nobody who is known. */
  madeBy: z.string().nullable().optional(),
  photos: z.array(z.object({ attachment: z.string(), item: z.string(), data: z.string() })),
})
const keptWhole = z.object({ asOfMs: z.number().nullable(), entries: z.array(keptEntry) })

/** A name put to something; `photos` are those still to be sent. */
export type Signed = z.infer<typeof keptEntry>
export type TakenPhoto = { readonly item: string; readonly data: string }

export type SignedStore = {
  readonly signed: ReadonlySignal<readonly Signed[]>
  /** When everything the others signed was last heard; null: never. */
  readonly asOfMs: ReadonlySignal<number | null>
  /** False: this browser has no room to keep it, and nothing was signed. */
  sign(file: SignOffFile, photos: readonly TakenPhoto[]): Promise<boolean>
  /** Sends what waits, then hears what others signed. */
  refresh(): Promise<void>
}

type Doors = {
  readonly fetch: (crossing: string) => Promise<readonly Listed[] | null>
  readonly sendPhoto: typeof sendPhoto
  readonly sendSigned: typeof sendSigned
  readonly now: () => number
  /** Who is signed in here, and whether a name put by somebody may go out under that. */
  readonly worksAs: () => string | null
  readonly goesNow: (madeBy: string | null) => boolean
}
const DOORS: Doors = {
  fetch: fetchSigned,
  sendPhoto,
  sendSigned,
  now: () => Date.now(),
  worksAs,
  goesNow,
}

function read(key: string): z.infer<typeof keptWhole> {
  const nothing = { asOfMs: null, entries: [] }
  const text = recall(key)
  if (text === null) return nothing
  try {
    const whole = keptWhole.safeParse(JSON.parse(text))
    return whole.success ? whole.data : nothing
  } catch (error) {
    if (error instanceof SyntaxError) return nothing
    throw error
  }
}

/** What is signed for one crossing: kept in this browser first, sent when the server can be reached. */
export function signedStore(crossing: string, doors: Doors = DOORS): SignedStore {
  const key = `underlane.signed.${crossing}`
  const start = read(key)
  const signed = signal<readonly Signed[]>(start.entries)
  const asOfMs = signal(start.asOfMs)
  let isBusy = false

  const keep = (entries: readonly Signed[], heardMs: number | null): boolean => {
    if (!remember(key, JSON.stringify({ asOfMs: heardMs, entries }))) return false
    signed.value = entries
    asOfMs.value = heardMs
    return true
  }
  const change = (id: string, to: Partial<Signed>) =>
    keep(
      signed.value.map((each) => (each.id === id ? { ...each, ...to } : each)),
      asOfMs.value,
    )

  async function sendOne({ id, file, photos }: Signed): Promise<boolean> {
    let left = photos
    for (const photo of photos) {
      if (!(await doors.sendPhoto(crossing, photo))) return false
      left = left.filter((each) => each !== photo)
      change(id, { photos: left })
    }
    if (!(await doors.sendSigned({ id, file }))) return false
    change(id, { isSent: true })
    return true
  }

  async function refresh(): Promise<void> {
    if (isBusy) return
    isBusy = true
    try {
      for (const entry of signed.value.filter((each) => !each.isSent && doors.goesNow(each.madeBy ?? null))) {
        await sendOne(entry)
      }
      const heardMs = doors.now()
      const listed = await doors.fetch(crossing)
      if (listed === null) return
      const known = new Set(listed.map((each) => each.id))
      const waiting = signed.value.filter((each) => !each.isSent && !known.has(each.id))
      keep([...listed.map((each) => ({ ...each, isSent: true, photos: [] })), ...waiting], heardMs)
    } finally {
      isBusy = false
    }
  }

  return {
    signed,
    asOfMs,
    refresh,
    async sign(file, taken) {
      const photos = taken.map((each) => ({ ...each, attachment: newId() }))
      const whole = {
        ...file,
        photos: photos.map(({ item, attachment }) => ({ item, attachment })),
      }
      const entry = { id: newId(), file: whole, isSent: false, madeBy: doors.worksAs(), photos }
      if (!keep([...signed.value, entry], asOfMs.value)) return false
      await refresh()
      return true
    },
  }
}
