import { JURISDICTION_IDS } from '../../tables/jurisdiction-ids.ts'

/** What people write for a place that has another code. */
const OTHER_NAMES: Readonly<Record<string, string>> = {
  UK: 'GB',
  ENGLAND: 'GB',
  ONTARIO: 'CA-ON',
  ON: 'CA-ON',
}

/** The code of a place as typed (`us-va`, `VA`, `UK`); null when there are no rules for it. */
export function jurisdictionOf(typed: string): string | null {
  const text = typed.trim().toUpperCase()
  const wanted = Object.hasOwn(OTHER_NAMES, text) ? (OTHER_NAMES[text] ?? text) : text
  return (
    JURISDICTION_IDS.find((id) => id === wanted) ??
    JURISDICTION_IDS.find((id) => id === `US-${wanted}`) ??
    null
  )
}
