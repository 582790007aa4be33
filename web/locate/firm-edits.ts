import { signal } from '@preact/signals'
import { z } from 'zod'
import { jurisdictionEdit } from '../../shared/contracts/jurisdiction-edit.ts'
import type { JurisdictionEdit } from '../../shared/core/digsafe/edited-row.ts'
import { noteReached } from '../offline/connection.ts'
import { newId } from '../saved/new-id.ts'
import { recall, remember } from '../state/browser-memory.ts'
import { type Json, type JsonObject, parseObject } from '../state/json.ts'

const KEY = 'underlane.firm-edits'

const settings = z.object({
  items: z.array(z.object({ id: z.string(), version: z.number(), document: z.record(z.string(), z.json()) })),
})
type Kept = z.infer<typeof settings>['items'][number]

/** What the firm has corrected, as this browser last heard it. */
export const firmEdits = signal<readonly JurisdictionEdit[]>([])

function readEdits(document: JsonObject | null): readonly JurisdictionEdit[] {
  const list = document?.jurisdictions
  if (!Array.isArray(list)) return []
  return list.flatMap((each) => {
    const parsed = jurisdictionEdit.safeParse(each)
    return parsed.success ? [parsed.data] : []
  })
}

async function askSettings(): Promise<Kept | null | 'failed'> {
  try {
    const answer = await fetch('/api/settings', { headers: { Accept: 'application/json' } })
    noteReached(true)
    const parsed = settings.safeParse(answer.ok ? await answer.json() : null)
    return parsed.success ? (parsed.data.items[0] ?? null) : 'failed'
  } catch (error) {
    if (error instanceof TypeError) noteReached(false)
    if (error instanceof TypeError || error instanceof SyntaxError) return 'failed'
    throw error
  }
}

/** What was heard before at once, then what the server says now. */
export async function fetchFirmEdits(): Promise<void> {
  firmEdits.value = readEdits(parseObject(recall(KEY) ?? ''))
  const kept = await askSettings()
  if (kept === 'failed' || kept === null) return
  firmEdits.value = readEdits(kept.document)
  remember(KEY, JSON.stringify({ jurisdictions: kept.document.jurisdictions ?? [] }))
}

export type EditSent = 'saved' | 'refused' | 'noServer'

/** Adds one change to what the firm has chosen; the changes before it stay, dated. */
export async function sendEdit(edit: JsonObject): Promise<EditSent> {
  const kept = await askSettings()
  if (kept === 'failed') return 'noServer'
  const before = kept?.document.jurisdictions
  const jurisdictions: Json = [...(Array.isArray(before) ? before : []), edit]
  const document = { ...(kept?.document ?? { name: 'Settings' }), jurisdictions }
  try {
    const answer = await fetch(`/api/settings/${kept?.id ?? newId()}`, {
      method: 'PUT',
      headers: {
        'Content-Type': 'application/json',
        ...(kept === null ? {} : { 'If-Match': `"${kept.version}"` }),
      },
      body: JSON.stringify(document),
    })
    if (!answer.ok) return 'refused'
    await fetchFirmEdits()
    return 'saved'
  } catch (error) {
    if (error instanceof TypeError) return 'noServer'
    throw error
  }
}
