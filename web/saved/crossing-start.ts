import type { KeptCrossing } from '../../shared/contracts/kept-crossing.ts'
import { sameJson } from '../../shared/contracts/merge-documents.ts'
import type { CrossingCopy } from '../offline/browser-store.ts'
import type { QueuedChange } from '../offline/outbox.ts'
import type { JsonObject } from '../state/json.ts'
import type { Base, SaverStart } from './saver.ts'
import type { UnsavedWork } from './unsaved-work.ts'

/** What is known of a crossing when its page opens. */
export type Known = {
  readonly id: string
  /** As the server answered just now. */
  readonly kept: KeptCrossing | null
  /** As this browser keeps it. */
  readonly copy: CrossingCopy | null
  /** What this tab had typed and not saved. */
  readonly own: UnsavedWork | null
  /** Changes that were saved here and have not come through. */
  readonly queued: readonly QueuedChange[]
}

export type Start = SaverStart & { readonly document: JsonObject }

const isStuck = ({ state }: QueuedChange): boolean => state === 'conflict' || state === 'refused'

function baseOfKnown({ kept, copy, own }: Known, last: QueuedChange | undefined): Base | null {
  if (own !== null && !(kept !== null && sameJson(own.document, kept.document))) return own.base
  // Of what a queued change was made from only the version is known: the copy here already holds the change.
  if (last !== undefined && (isStuck(last) || kept === null)) {
    return last.baseVersion === null ? null : { version: last.baseVersion, document: null }
  }
  if (kept !== null) return { version: kept.version, document: kept.document }
  return copy === null || copy.version === null ? null : { version: copy.version, document: copy.document }
}

/** Which document the page opens, and what it was made from; null when nobody has it. */
export function startFrom(known: Known): Start | null {
  const { id, kept, copy, own, queued } = known
  const last = queued.findLast((change) => change.document !== null)
  const document = own?.document ?? last?.document ?? kept?.document ?? copy?.document
  if (document === undefined) return null
  const waitingKey = last !== undefined && !isStuck(last) ? last.key : null
  return { id, document, base: baseOfKnown(known, last), kept, waitingKey }
}
