import type { Kind } from '../core/kinds.ts'
import { KINDS } from '../core/kinds.ts'
import { feetAndInchesText } from './feet-and-inches.ts'
import { BARE_US_UNITS, DATUM_OF_KIND, DIMENSIONS_OF_KIND, LIKELY_UNITS } from './kind-units.ts'
import { nearestWord } from './nearest-word.ts'
import { LONGEST_QUANTITY, plainNotation } from './plain-notation.ts'
import type { Echo, ParsedQuantity } from './quantity-refusals.ts'
import { refuse, refuseComma, unitIds, withUnits } from './quantity-refusals.ts'
import { readCompound } from './read-compound.ts'
import { NUMBER, readNumber } from './read-number.ts'
import { readRatio, withoutBlowCountLetter } from './read-ratio.ts'
import { isUnitOfAnyKind, matchUnit, namesOfKind, plainUnit, unitOfKind } from './unit-spelling.ts'
import type { Unit } from './units.ts'
import { toSi } from './units.ts'

export type { Echo, ParsedQuantity } from './quantity-refusals.ts'

export type ParseOptions = {
  /** What a number without a unit means: what the file's "units" says; without it a bare number is refused. */
  readonly bare?: 'refuse' | 'si' | 'us'
  /** The unit this very field implies, by its label: `185` in a compressor field is cfm. Goes before `bare`. */
  readonly impliedUnit?: string
}

const NUMBER_AND_REST = new RegExp(`^(${NUMBER})\\s*(.*)$`)
const POUNDS = new RegExp(`^(${NUMBER})\\s*#$`)
/** `42-6`, `42-6 1/2"`: feet and inches with the marks left out. */
const FEET_DASH_INCHES = /^(\d+)\s*-\s*(\d+(?:\s*-\s*\d+\/\d+|\s+\d+\/\d+|\.\d+)?)\s*(?:"|in)?$/
/** `1 200 mm`: a space for thousands, or two numbers run together? */
const SPACED_THOUSANDS = /^\d{1,3}(?: \d{3})+(?![\d/])/
const SIZE_MARK = /^(?:[Øø⌀∅]|dia\.?(?:meter)?\s|od\s|id\s)\s*/i
const SIZE_WORD = /\s*\b(?:dp|deep|depth|lg|long|length|dia|diameter|od|id|wide|high|thick)\.?$/i

const withRest = (number: string, rest: string): string =>
  /^["'%°]/.test(rest) || rest === '' ? number + rest : `${number} ${rest}`

/**
 * Reads one quantity as a person writes it, in the notations of the trade, into SI. Never throws, whatever comes in.
 * What cannot be read one way only is refused with the readings it could have.
 */
export function parseQuantity(text: unknown, kind: Kind, options: ParseOptions = {}): ParsedQuantity {
  if (typeof text === 'number') {
    if (!Number.isFinite(text)) return refuse('not-finite', text, kind)
    return new Reading(String(text), kind, options).result()
  }
  if (typeof text !== 'string') return refuse('wrong-type', text, kind)
  if (text.length > LONGEST_QUANTITY) {
    return refuse('too-long', text, kind, { values: { characters: text.length, most: LONGEST_QUANTITY } })
  }
  return new Reading(text, kind, options).result()
}

/** One text on its way to a number; a class only so that the six things every step needs are written down once. */
class Reading {
  private readonly given: string
  private readonly kind: Kind
  private readonly options: ParseOptions
  private readonly sign: number
  /** Without sign, size mark and size word. */
  private readonly plain: string
  /** A Ø before or a "deep" behind says what is measured, never in which unit: such a number is always asked about. */
  private readonly marked: boolean
  private readonly isLength: boolean

  constructor(given: string, kind: Kind, options: ParseOptions) {
    this.given = given
    this.kind = kind
    this.options = options
    this.isLength = DIMENSIONS_OF_KIND[kind].includes('length')
    let plain = plainNotation(given)
    if (kind === 'ratio' || kind === 'count') plain = withoutBlowCountLetter(plain)
    const unmarked = this.isLength ? plain.replace(SIZE_MARK, '').replace(SIZE_WORD, '') : plain
    this.marked = unmarked !== plain
    this.sign = unmarked.startsWith('-') ? -1 : 1
    this.plain = unmarked.replace(/^[-+]\s*/, '')
  }

  result(): ParsedQuantity {
    const { plain, kind, given } = this
    if (plain === '' || /^0x/i.test(plain)) return refuse('not-a-quantity', given, kind)
    if (/^(?:nan|inf(?:inity)?|∞)(?![a-z])/i.test(plain)) return refuse('not-finite', given, kind)
    if (/\d\s*,\s*\d/.test(plain)) return refuseComma(given, plainNotation(given), kind)
    return this.trap() ?? readRatio(plain, given, kind, this.sign) ?? this.numberAndUnit()
  }

  /** Notations that read two ways: asked, never guessed. */
  private trap(): ParsedQuantity | null {
    const { plain, kind, given } = this
    if (SPACED_THOUSANDS.test(plain)) {
      const joined = this.signed(plain.replace(/(\d) (?=\d{3}(?!\d))/g, '$1'))
      return refuse('ask', given, kind, { candidates: [{ value: joined, means: 'no space' }] })
    }
    const pounds = POUNDS.exec(plain)
    if (pounds) {
      const units = ['psi', 'lbf', 'lb'].filter((each) => unitOfKind(each, kind)?.id === each)
      const candidates = withUnits(this.signed(pounds[1] ?? ''), units)
      return refuse(candidates.length > 0 ? 'ask' : 'wrong-dimension', given, kind, { candidates })
    }
    const dashed = this.isLength ? FEET_DASH_INCHES.exec(plain) : null
    if (!dashed) return null
    const candidates = [{ value: this.signed(`${dashed[1]} ft ${dashed[2]} in`), means: 'ft, in' }]
    return refuse('ask', given, kind, { candidates })
  }

  private numberAndUnit(): ParsedQuantity {
    const { plain, kind, given } = this
    const [, number = '', rest = ''] = NUMBER_AND_REST.exec(plain) ?? []
    if (number === '') return refuse('not-a-quantity', given, kind)
    const read = readNumber(number)
    switch (read.read) {
      case 'nothing':
        return refuse('not-a-quantity', given, kind)
      case 'zero-denominator':
        return refuse('not-a-quantity', given, kind, { values: { reason: 'zero-denominator' } })
      case 'not-finite':
        return refuse('not-finite', given, kind)
      case 'unclear-fraction': {
        const candidates = [
          { value: this.signed(withRest(read.mixed, rest)), means: read.mixed },
          { value: this.signed(withRest(read.decimal, rest)), means: number },
        ]
        return refuse('ask', given, kind, { candidates })
      }
      case 'number':
        return rest === ''
          ? this.bare(number, read.value)
          : this.inUnit(number, read.value, read.decimal, rest)
    }
  }

  private bare(number: string, value: number): ParsedQuantity {
    const { kind, given, options } = this
    if (kind === 'ratio' || kind === 'count') return this.found(value)
    const implied = this.marked ? null : this.unitOfBareNumber(options)
    if (implied) return this.found(toSi(this.sign * value, implied), true)
    const candidates = withUnits(this.signed(number), LIKELY_UNITS[kind])
    return refuse('ask', given, kind, { candidates, values: { why: 'bare-number' } })
  }

  private unitOfBareNumber(options: ParseOptions): Unit | null {
    if (options.impliedUnit !== undefined) return unitOfKind(options.impliedUnit, this.kind)
    if (options.bare === 'si') return unitOfKind(KINDS[this.kind].unit, this.kind)
    const us = options.bare === 'us' ? BARE_US_UNITS[this.kind] : undefined
    return us === undefined ? null : unitOfKind(us, this.kind)
  }

  private inUnit(number: string, value: number, decimal: boolean, rest: string): ParsedQuantity {
    const { kind, given } = this
    const match = matchUnit(rest, kind)
    if (match.found === 'several') {
      return refuse('ask', given, kind, { candidates: withUnits(this.signed(number), unitIds(match.units)) })
    }
    if (match.found === 'one') return this.inKnownUnit(number, value, decimal, match.unit)
    const compound = readCompound(this.plain, given, kind, this.sign)
    if (compound) return compound
    if (plainUnit(rest) === '°' && DIMENSIONS_OF_KIND[kind].some((each) => each.startsWith('temperature'))) {
      return refuse('ask', given, kind, { candidates: withUnits(this.signed(number), ['°F', '°C']) })
    }
    if (isUnitOfAnyKind(rest)) return refuse('wrong-dimension', given, kind)
    const near = nearestWord(plainUnit(rest), namesOfKind(kind))
    return refuse('unknown-unit', given, kind, {
      candidates: near ? withUnits(this.signed(number), [near]) : [],
    })
  }

  private inKnownUnit(number: string, value: number, decimal: boolean, unit: Unit): ParsedQuantity {
    const { kind, given } = this
    const wanted = DATUM_OF_KIND[kind]
    if (unit.datum !== undefined && unit.datum !== wanted) {
      return refuse('wrong-dimension', given, kind, {
        values: { datum: unit.datum, wanted: wanted ?? 'stress' },
      })
    }
    const valueSi = toSi(this.sign * value, unit)
    if (unit.id !== 'ft' || !decimal || Number.isInteger(value)) return this.found(valueSi, true)
    return this.found(valueSi, true, this.echo(number, value))
  }

  /** 4.6 ft is 4 ft 7-1/4 in, and is often meant as 4 ft 6 in. */
  private echo(number: string, value: number): Echo {
    const inches = /^(\d+)\.(\d{1,2})$/.exec(number)
    const mistaken = inches !== null && Number(inches[2]) < 12
    return {
      reads: feetAndInchesText(this.sign * value * 12, 4),
      not: mistaken ? this.signed(`${inches[1]} ft ${Number(inches[2])} in`) : null,
    }
  }

  private found(value: number, signedAlready = false, echo?: Echo): ParsedQuantity {
    const valueSi = (signedAlready ? value : this.sign * value) + 0
    if (!Number.isFinite(valueSi)) return refuse('not-finite', this.given, this.kind)
    if (this.kind === 'temperature' && valueSi < 0) {
      return refuse('out-of-range', this.given, this.kind, { values: { leastK: 0 } })
    }
    return echo ? { ok: true, valueSi, echo } : { ok: true, valueSi }
  }

  private signed(number: string): string {
    return this.sign < 0 ? `-${number}` : number
  }
}
