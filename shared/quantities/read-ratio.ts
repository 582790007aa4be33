import type { Kind } from '../core/kinds.ts'
import type { ParsedQuantity } from './quantity-refusals.ts'
import { refuse } from './quantity-refusals.ts'
import { NUMBER, readNumber } from './read-number.ts'
import { matchUnit } from './unit-spelling.ts'
import { toSi } from './units.ts'

/** `1 in 40`, `1:40`, `1.5H:1V`. */
const ONE_IN = new RegExp(`^(${NUMBER})\\s*h?\\s*(?:in|:|to)\\s*(${NUMBER})\\s*v?$`, 'i')
/** `1/4" per ft`, `20 mm/m`. */
const RISE_PER_RUN = new RegExp(`^(${NUMBER})\\s*([a-zµ'"]+)\\.?\\s*(?:per|/)\\s*([a-zµ'"]+)\\.?$`, 'i')
/** `N=9`, `N60 = 9`: how a log prints a blow count. */
const BLOW_COUNT = /^n(?:60|160|\(?1\)?60)?\s*[=:]\s*(?=[\d.])/i

/** Blow counts and the like: the letter before the number says nothing a plain-number field does not know. */
export const withoutBlowCountLetter = (plain: string): string => plain.replace(BLOW_COUNT, '')

/** The ways to write a slope or share that are no number with a unit; null when the text is none of them. */
export function readRatio(plain: string, given: unknown, kind: Kind, sign: number): ParsedQuantity | null {
  if (kind !== 'ratio') return null
  const oneIn = ONE_IN.exec(plain)
  if (oneIn) return divided(oneIn[1] ?? '', oneIn[2] ?? '', given, kind, sign)
  const slope = RISE_PER_RUN.exec(plain)
  if (!slope) return null
  const [, number = '', rise = '', run = ''] = slope
  const riseUnit = matchUnit(rise, 'length')
  const runUnit = matchUnit(run, 'length')
  if (riseUnit.found !== 'one' || runUnit.found !== 'one') return null
  const read = readNumber(number)
  if (read.read !== 'number')
    return refuse(read.read === 'not-finite' ? 'not-finite' : 'not-a-quantity', given, kind)
  return { ok: true, valueSi: (sign * toSi(read.value, riseUnit.unit)) / toSi(1, runUnit.unit) }
}

function divided(top: string, bottom: string, given: unknown, kind: Kind, sign: number): ParsedQuantity {
  const above = readNumber(top)
  const below = readNumber(bottom)
  if (above.read !== 'number' || below.read !== 'number') return refuse('not-a-quantity', given, kind)
  const valueSi = (sign * above.value) / below.value
  if (below.value === 0)
    return refuse('not-a-quantity', given, kind, { values: { reason: 'zero-denominator' } })
  return Number.isFinite(valueSi) ? { ok: true, valueSi } : refuse('not-finite', given, kind)
}
