import type { Kind } from '../../shared/core/kinds.ts'
import type { Spread } from '../../shared/core/plan/plan.ts'
import { formatQuantity, NO_NUMBER } from '../../shared/quantities/format-quantity.ts'
import { saidChance, saidQuantity, saidRoughly } from '../../shared/text/say-quantity.ts'
import { say } from '../state/unit-choice.ts'

/** A quantity in the reader's units; a dash where there is none. */
export const shown = (valueSi: number | null, kind: Kind): string =>
  valueSi === null ? NO_NUMBER : saidQuantity(valueSi, kind, say.value)

/** A usual size nobody measured. */
export const shownRoughly = (lengthM: number): string => saidRoughly(lengthM, say.value)

/** What is dug, one unit in a column, however small the pit. */
export const shownDug = (volumeM3: number): string =>
  formatQuantity(volumeM3, 'volume', say.value.system, {
    unit: say.value.system === 'us' ? 'ft3' : 'm3',
    digits: 2,
  })

export const shownChance = (probability: number | null): string =>
  probability === null ? NO_NUMBER : saidChance(probability, say.value.lang)

/** Good day, likely, bad day; for what is better the larger it is, a good day is the high end. */
export function shownSpread(
  spread: Spread | null,
  kind: Kind,
  more: 'is-better' | 'is-worse',
): readonly string[] {
  if (spread === null) return [NO_NUMBER, NO_NUMBER, NO_NUMBER]
  const { p10, p50, p90 } = spread
  return (more === 'is-worse' ? [p10, p50, p90] : [p90, p50, p10]).map((value) => shown(value, kind))
}

/** A plain number: ratios, counts. */
export const shownNumber = (value: number): string => saidQuantity(value, 'ratio', say.value)
