import type { Kind } from '../core/kinds.ts'
import { DIMENSIONS_OF_KIND } from './kind-units.ts'
import type { ParsedQuantity } from './quantity-refusals.ts'
import { refuse } from './quantity-refusals.ts'
import { NUMBER, readNumber } from './read-number.ts'
import { matchUnit } from './unit-spelling.ts'
import type { Dimension, Unit } from './units.ts'
import { toSi } from './units.ts'

const COMPOUND: readonly Dimension[] = ['length', 'duration', 'mass', 'angle']
const TERM = new RegExp(`^(${NUMBER})\\s*([A-Za-zµ]+\\.?|'|"|°)?(.*)$`)
const FEET = ["'", 'ft', 'ft.', 'feet', 'foot']
/** Degrees, minutes and seconds are the longest. */
const MOST_TERMS = 3

type Term = { readonly value: number; readonly whole: boolean; readonly number: string; readonly unit: Unit }

/** `42'-6"`, `42'6`, `46 ft 6 in`, `3 h 10 min`, `12° 30'`; null when the text is not built like that. */
export function readCompound(plain: string, given: unknown, kind: Kind, sign: number): ParsedQuantity | null {
  if (!DIMENSIONS_OF_KIND[kind].some((each) => COMPOUND.includes(each))) return null
  const terms = readTerms(plain, kind)
  if (!terms) return null
  for (const [index, term] of terms.entries()) {
    const before = terms[index - 1]
    if (!before) continue
    if (!before.whole || term.unit.factor >= before.unit.factor) return refuse('not-a-quantity', given, kind)
    if (toSi(term.value, term.unit) >= toSi(1, before.unit)) return askForSmallUnit(terms, given, kind, sign)
  }
  const smallest = terms[terms.length - 1]
  if (!smallest) return null
  const valueSi = toSi(sign * totalIn(smallest.unit, terms), smallest.unit) + 0
  return Number.isFinite(valueSi) ? { ok: true, valueSi } : refuse('not-finite', given, kind)
}

/** `4' 14"`: a slip in one of the two, or all in inches? */
function askForSmallUnit(terms: readonly Term[], given: unknown, kind: Kind, sign: number): ParsedQuantity {
  const smallest = terms[terms.length - 1]
  if (!smallest) return refuse('not-a-quantity', given, kind)
  const total = Number(totalIn(smallest.unit, terms).toPrecision(12))
  const value = `${sign < 0 ? '-' : ''}${total} ${smallest.unit.id}`
  return refuse('ask', given, kind, { candidates: [{ value, means: smallest.unit.id }] })
}

/** Added up in the smallest unit: 42 ft 6-1/2 in is 510.5 in exactly. */
function totalIn(smallest: Unit, terms: readonly Term[]): number {
  return terms.reduce((sum, term) => {
    const times = term.unit.factor / smallest.factor
    const whole = Math.round(times)
    return sum + term.value * (Math.abs(times - whole) < 1e-9 * whole ? whole : times)
  }, 0)
}

function readTerms(plain: string, kind: Kind): readonly Term[] | null {
  const terms: Term[] = []
  let rest = plain
  let lastMark = ''
  while (rest !== '') {
    const [, number = '', mark = '', after = ''] = TERM.exec(rest) ?? []
    const read = readNumber(number)
    if (read.read !== 'number' || terms.length === MOST_TERMS) return null
    /** After feet the inch mark may be left out, as on a tape: `42'6`, `3 ft 6`. */
    const unitText = mark === '' && FEET.includes(lastMark) ? '"' : mark
    const match = matchUnit(unitText, kind)
    if (match.found !== 'one') return null
    terms.push({ value: read.value, whole: Number.isInteger(read.value), number, unit: match.unit })
    lastMark = mark
    rest = after.replace(/^[\s,-]+/, '')
  }
  return terms.length > 1 ? terms : null
}
