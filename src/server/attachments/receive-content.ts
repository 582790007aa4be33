import { createHash } from 'node:crypto'
import { attachmentFile } from '../../../shared/contracts/attachment.ts'
import type { Act } from '../../store/noun.ts'
import { NOUNS } from '../../store/nouns.ts'
import type { Stores } from '../../store/open-store.ts'
import { uuidOf } from '../id-in-path.ts'
import type { FileFault } from './byte-reader.ts'
import { whatIsKept } from './what-is-kept.ts'

export type Received =
  | { readonly ok: true; readonly sha256: string; readonly byteCount: number; readonly version: number }
  | {
      readonly ok: false
      readonly fault: FileFault | 'absent' | 'another-type' | 'not-the-bytes' | 'changed'
    }

const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

/** Others may change the attachment between our reading and our writing; not for ever. */
const MOST_TRIES = 5

/** The attachment of an id with what it says of its bytes; null when there is none. */
export async function attachmentOf({ attachments }: Stores, id: string) {
  const uuid = uuidOf(id)
  const stored = uuid === null ? null : await attachments.find(uuid)
  const said = stored === null ? undefined : attachmentFile.safeParse(stored.document).data
  return stored === null || said === undefined ? null : { stored, said }
}

/**
 * Takes the bytes an attachment speaks of: a picture without the notes, places and comments that came with it. Where that
 * makes other bytes of it, the attachment speaks of those from then on, as a change of its own in its history. Sent again,
 * before or after, the same bytes are kept once.
 */
export async function receiveContent(
  stores: Stores,
  id: string,
  given: Uint8Array,
  act: Act,
): Promise<Received> {
  const sent = { sha256: hashOf(given), byteCount: given.length }
  const speaksOf = (said: { sha256: string; byteCount: number }, bytes: typeof sent) =>
    said.sha256 === bytes.sha256 && said.byteCount === bytes.byteCount
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const found = await attachmentOf(stores, id)
    if (found === null) return { ok: false, fault: 'absent' }
    const { stored, said } = found
    const kept = whatIsKept(said.mediaType, Buffer.from(given))
    const isAnnounced = speaksOf(said, sent)
    if (!kept.ok) return { ok: false, fault: isAnnounced ? kept.fault : 'not-the-bytes' }
    const now = { sha256: hashOf(kept.bytes), byteCount: kept.bytes.length }
    const isKept = speaksOf(said, now)
    if (!isAnnounced && !isKept) return { ok: false, fault: 'not-the-bytes' }
    await stores.contents.put(kept.bytes)
    if (isKept) return { ok: true, ...now, version: stored.version }
    const document = NOUNS.attachments.read({ ...stored.document, ...now })
    const changed = await stores.attachments.replace(
      { id: stored.id, document, made: null, expectedVersion: stored.version },
      act,
    )
    if (changed.outcome === 'done') return { ok: true, ...now, version: changed.stored.version }
  }
  return { ok: false, fault: 'changed' }
}
