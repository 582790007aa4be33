import type { Kind } from '../../shared/core/kinds.ts'
import type { Spread } from '../../shared/core/plan/plan.ts'
import { formatProbability } from '../../shared/quantities/format-probability.ts'
import { formatQuantity, NO_NUMBER } from '../../shared/quantities/format-quantity.ts'
import { units } from '../state/unit-choice.ts'

/** A quantity in the reader's units; a dash where there is none. */
export const shown = (valueSi: number | null, kind: Kind): string =>
  valueSi === null ? NO_NUMBER : formatQuantity(valueSi, kind, units.value)

export const shownChance = (probability: number | null): string =>
  probability === null ? NO_NUMBER : (formatProbability(probability) ?? NO_NUMBER)

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
export const shownNumber = (value: number): string => formatQuantity(value, 'ratio', units.value)

/** The kind in which a value known only by its SI unit is shown best. */
const KIND_OF_UNIT: Readonly<Record<string, Kind>> = {
  m: 'length',
  m2: 'area',
  m3: 'volume',
  s: 'duration',
  'm/s': 'speed',
  kg: 'mass',
  N: 'force',
  J: 'energy',
  W: 'power',
  Pa: 'stress',
  'm3/s': 'volumeFlow',
  K: 'temperature',
  rad: 'angle',
  Hz: 'frequency',
  'rad/m^0.5': 'drift',
  '1': 'ratio',
}

/** A value given with its SI unit, or a code. */
export function shownByUnit(value: number | string, unit: string, name: string): string {
  if (typeof value === 'string') return value
  const isPressure = unit === 'Pa' && /pressure/i.test(name)
  const kind = isPressure ? 'gaugePressure' : KIND_OF_UNIT[unit]
  return kind === undefined ? `${shownNumber(value)} ${unit}`.trim() : shown(value, kind)
}
