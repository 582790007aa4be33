import { z } from 'zod'
import { type SignOffFile, signOffFile } from '../../shared/contracts/sign-off.ts'
import { noteSignedOut } from '../access/session-state.ts'
import { noteReached } from '../offline/connection.ts'
import { sha256OfBytes } from '../sheet/sha256.ts'

/** A photo as it waits to be sent: a JPEG as a data address. */
export type WaitingPhoto = { readonly attachment: string; readonly item: string; readonly data: string }

/** A server that says nothing for so long is as good as none. */
const PATIENCE_MS = 20_000
const MOST_PAGES = 200
const JPEG = 'image/jpeg'

/** null when nobody answered. */
async function ask(path: string, init: RequestInit = {}): Promise<Response | null> {
  try {
    const answer = await fetch(path, { ...init, signal: AbortSignal.timeout(PATIENCE_MS) })
    noteReached(true)
    if (answer.status === 401) noteSignedOut()
    return answer
  } catch (error) {
    if (!(error instanceof TypeError || error instanceof DOMException)) throw error
    noteReached(false)
    return null
  }
}

const page = z.object({
  items: z.array(z.object({ id: z.string(), document: z.unknown() })),
  next: z.string().nullable(),
})

export type Listed = { readonly id: string; readonly file: SignOffFile }

/** Everything signed for a crossing, or for all of them; null when the server cannot be heard or answers otherwise than agreed. */
export async function fetchSigned(crossing: string | null): Promise<readonly Listed[] | null> {
  const found: Listed[] = []
  let after = ''
  const of = crossing === null ? '' : `of=${encodeURIComponent(crossing)}&`
  for (let pages = 0; pages < MOST_PAGES; pages++) {
    const answer = await ask(`/api/sign-offs?${of}limit=500${after}`, {
      cache: 'no-store',
    })
    if (answer === null || answer.status !== 200) return null
    const read = page.safeParse(await answer.json().catch(() => null))
    if (!read.success) return null
    for (const { id, document } of read.data.items) {
      // One of a later version says nothing here; what it closes stays open.
      const file = signOffFile.safeParse(document)
      if (file.success) found.push({ id, file: file.data })
    }
    if (read.data.next === null) return found
    after = `&after=${encodeURIComponent(read.data.next)}`
  }
  return null
}

const put = (path: string, key: string, body: BodyInit, type: string) =>
  ask(path, { method: 'PUT', headers: { 'Content-Type': type, 'Idempotency-Key': key }, body })

/** Sent twice it is there once; 409 says that it is there already. */
const isThere = (answer: Response | null): boolean =>
  answer !== null && [200, 201, 409, 428].includes(answer.status)

const bytesOf = (data: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(data.slice(data.indexOf(',') + 1)), (letter) => letter.charCodeAt(0))

/** The photo and its paper; false when it has to wait. */
export async function sendPhoto(
  crossing: string,
  { attachment, item, data }: WaitingPhoto,
): Promise<boolean> {
  const bytes = bytesOf(data)
  const announced = {
    name: `${item}.jpg`,
    of: crossing,
    mediaType: JPEG,
    byteCount: bytes.length,
    sha256: sha256OfBytes(bytes),
  }
  const address = `/api/attachments/${attachment}`
  if (!isThere(await put(address, attachment, JSON.stringify(announced), 'application/json'))) return false
  const answer = await put(`${address}/content`, attachment, new Blob([bytes], { type: JPEG }), JPEG)
  return answer !== null && answer.status === 200
}

/** A sign-off; false when it has to wait. */
export const sendSigned = async ({ id, file }: Listed): Promise<boolean> =>
  isThere(await put(`/api/sign-offs/${id}`, id, JSON.stringify(file), 'application/json'))
