/** One card: what is done at once, then, and never. Sentences may hold {emergency}, the number to call. */
export type Card = {
  readonly title: string
  readonly now: readonly string[]
  readonly after: readonly string[]
  readonly never: readonly string[]
  /** Where sources do not agree, said openly. */
  readonly note?: string
}

export const CARDS = ['gas', 'electric', 'water', 'sewer', 'telecom', 'stuck'] as const
export type CardId = (typeof CARDS)[number]

/** Whom each card goes by; rules by their number, the rest said to be practice or our own inference. */
export const CARD_SOURCES: Readonly<Record<CardId, readonly string[]>> = {
  gas: [
    '49 CFR 196.107, 196.109',
    'DOT Emergency Response Guidebook, guide 115 (second hand)',
    'Damage pages of gas utilities and one-call centers (second hand); not pulling the tool and saying where the bore runs: our judgment',
  ],
  electric: [
    'Dig-in pages of power utilities; step and touch voltage at boring machines (second hand)',
    'Pit, hose and pit water: our judgment, no published guidance found',
  ],
  water: ['29 CFR 1926.651(h), (k)', 'Emergency page of a one-call center (second hand)'],
  sewer: [
    'Cross Bore Safety Association, Leading Practices',
    'Emergency page of a one-call center (second hand)',
  ],
  telecom: ['Dig-in pages of utilities (second hand)'],
  stuck: ['Common practice of the trade; no published source'],
}

/** The number that brings help where the ticket is from; 911 in North America. */
export function emergencyNumber(jurisdiction: string | null): string {
  if (jurisdiction === 'GB') return '999'
  return jurisdiction === 'AU' ? '000' : '911'
}
