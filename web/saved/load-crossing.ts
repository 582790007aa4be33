import type { KeptCrossing } from '../../shared/contracts/kept-crossing.ts'
import { dropChange, keepCrossing, keptCrossing } from '../offline/kept-crossings.ts'
import { fetchCrossing } from './crossing-requests.ts'
import { type Start, startFrom } from './crossing-start.ts'
import { flush } from './send-or-queue.ts'
import type { WorkKeeper } from './unsaved-work.ts'

export type Loaded =
  | { readonly state: 'ready'; readonly start: Start; readonly isCopy: boolean }
  | { readonly state: 'absent' | 'unreachable' | 'trouble' }

/** Saved a moment ago by another page of this tab: no need to ask for it. */
const justSaved = new Map<string, KeptCrossing>()

export const rememberJustSaved = (kept: KeptCrossing): void => {
  justSaved.set(kept.id, kept)
}

async function asked(id: string) {
  const known = justSaved.get(id)
  justSaved.delete(id)
  return known === undefined ? fetchCrossing(id) : { state: 'done' as const, kept: known }
}

/** One crossing from the server, else from this browser, with what was typed into it and not saved. */
export async function loadCrossing(id: string, keeper: WorkKeeper): Promise<Loaded> {
  const queued = (await flush()).filter((change) => change.id === id)
  const answer = await asked(id)
  const kept = answer.state === 'done' ? answer.kept : null
  const copy = kept === null && answer.state !== 'absent' ? await keptCrossing(id) : null
  if (kept !== null) {
    void keepCrossing({ id, version: kept.version, demo: kept.demo, document: kept.document })
  }
  const start = startFrom({ id, kept, copy, own: keeper.own(), queued })
  if (start === null)
    return { state: answer.state === 'unreachable' || answer.state === 'trouble' ? answer.state : 'absent' }
  // A person decides now about what the server did not take.
  for (const change of queued) {
    if (change.state === 'conflict' || change.state === 'refused') void dropChange(change.key)
  }
  return { state: 'ready', start, isCopy: kept === null && answer.state !== 'absent' }
}
