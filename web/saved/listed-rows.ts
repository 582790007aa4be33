import { parseCrossing } from '../../shared/contracts/crossing.ts'
import type { ListedCrossing } from '../../shared/contracts/kept-crossing.ts'
import { geodesicBetween } from '../../shared/core/line/geodesic.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'
import type { CrossingCopy } from '../offline/browser-store.ts'
import type { JsonObject } from '../state/json.ts'

/** One crossing as the list shows it. */
export type Row = {
  readonly id: string
  /** null while only this browser has it. */
  readonly version: number | null
  readonly name: string
  /** 'unknown': this browser's copy does not say. */
  readonly status: 'hold' | 'check' | 'no-plan' | 'unknown'
  readonly lengthM: number | null
  readonly updatedAt: string
  /** From this browser: `updatedAt` is when it was kept here. */
  readonly isCopy: boolean
  readonly demo: boolean
  readonly document: JsonObject
}

export type Order = 'date' | 'name'

function lengthOf(document: JsonObject): number | null {
  const read = parseCrossing(document)
  if (!read.ok) return null
  const { line } = read.value
  return 'lengthM' in line ? line.lengthM : geodesicBetween(line.launch, line.reception).lengthM
}

export const rowOfListed = (listed: ListedCrossing): Row => ({
  id: listed.id,
  version: listed.version,
  name: listed.name,
  status: listed.status ?? 'unknown',
  lengthM: lengthOf(listed.document),
  updatedAt: listed.updatedAt,
  isCopy: false,
  demo: listed.demo,
  document: listed.document,
})

/** As `release` would be answered now; this browser works it out where the server cannot be asked. */
function statusNow(document: JsonObject): Row['status'] {
  const read = parseCrossing(document)
  const plan = read.ok ? planCrossing(read.value) : read
  return plan.ok ? plan.value.release.status : 'no-plan'
}

const rowOfCopy = (copy: CrossingCopy, status: Row['status']): Row => ({
  id: copy.id,
  version: copy.version,
  name: typeof copy.document.name === 'string' ? copy.document.name : copy.id,
  status,
  lengthM: lengthOf(copy.document),
  updatedAt: new Date(copy.keptAtMs).toISOString(),
  isCopy: true,
  demo: copy.demo,
  document: copy.document,
})

/** More than these would keep a telephone busy; the rest open to their status. */
const MOST_WORKED_OUT = 60

/** Rows of what this browser keeps, worked out one by one so that the page stays at hand. */
export async function rowsOfCopies(copies: readonly CrossingCopy[]): Promise<readonly Row[]> {
  const rows: Row[] = []
  for (const [place, copy] of copies.entries()) {
    rows.push(rowOfCopy(copy, place < MOST_WORKED_OUT ? statusNow(copy.document) : 'unknown'))
    await new Promise((resolve) => setTimeout(resolve))
  }
  return rows
}

/** Small letters without accents, so that "senor" finds "Señor". */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()

/** Those whose name has every word sought, in the order asked for. */
export function rowsShown(rows: readonly Row[], sought: string, order: Order): readonly Row[] {
  const words = plain(sought)
    .split(/\s+/)
    .filter((word) => word !== '')
  const byName = (a: Row, b: Row) =>
    a.name.localeCompare(b.name, 'en', { numeric: true }) || a.id.localeCompare(b.id)
  return rows
    .filter((row) => words.every((word) => plain(row.name).includes(word)))
    .sort((a, b) => (order === 'name' ? 0 : b.updatedAt.localeCompare(a.updatedAt)) || byName(a, b))
}
