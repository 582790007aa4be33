import type { GeoPosition } from '../core/kinds.ts'
import type { Issue } from '../core/outcome.ts'
import type { PairsField } from '../core/relation.ts'
import { type ParseOptions, parseQuantity } from '../quantities/parse-quantity.ts'
import { shortened } from '../quantities/plain-notation.ts'
import { acceptedUnits } from '../quantities/quantity-refusals.ts'

export type Read = { readonly value: unknown } | { readonly issues: readonly Issue[] }
export const bad = (...issues: readonly Issue[]): Read => ({ issues })

/** As many problems as one answer names. */
export const MOST_ISSUES = 50
/** A fleet's whole history of failures fits; a pasted file does not. */
const LONGEST_LIST = 10_000
const LONGEST_LIST_TEXT = 200_000
const PLAIN_NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/

export const LIST_NOTATION = '17.88,28.92'
export const POSITION_NOTATION = '-78.1,38.2'
export const pairsNotation = (field: PairsField): string =>
  field.pairs.map((kind) => acceptedUnits(kind)).join(' : ')

/** One plain number: a JSON number, or its digits. */
function plainNumber(value: unknown): number | null {
  const number = typeof value === 'string' && PLAIN_NUMBER.test(value.trim()) ? Number(value) : value
  return typeof number === 'number' && Number.isFinite(number) ? number : null
}

/** Parts of a list or a pair, typed with commas or sent as an array; null when it is neither. */
function parts(value: unknown): readonly unknown[] | null {
  if (Array.isArray(value)) return value
  if (typeof value === 'number') return [value]
  if (typeof value !== 'string' || value.length > LONGEST_LIST_TEXT) return null
  return value.trim() === '' ? [] : value.split(/[,;]/)
}

export function readList(key: string, value: unknown): Read {
  const items = parts(value)
  const expected = LIST_NOTATION
  if (!items) return bad({ path: key, code: 'wrong-type', given: shortened(value), accepted: expected })
  if (items.length === 0) return bad({ path: key, code: 'required', accepted: expected })
  if (items.length > LONGEST_LIST) {
    return bad({ path: key, code: 'too-long', values: { items: items.length, most: LONGEST_LIST } })
  }
  const numbers = items.map(plainNumber)
  const issues = items.flatMap((item, index): Issue[] =>
    numbers[index] === null
      ? [{ path: `${key}.${index}`, code: 'not-a-quantity', given: shortened(item), accepted: expected }]
      : [],
  )
  return issues.length > 0 ? bad(...issues.slice(0, MOST_ISSUES)) : { value: numbers }
}

/** `20 h:0.25 mm,35 h:0.41 mm`, or an array of such pairs or of two-part arrays. None at all is a list too. */
export function readPairs(key: string, field: PairsField, value: unknown, options: ParseOptions): Read {
  const items = parts(value)
  if (!items)
    return bad({ path: key, code: 'wrong-type', given: shortened(value), accepted: pairsNotation(field) })
  if (items.length > LONGEST_LIST) {
    return bad({ path: key, code: 'too-long', values: { items: items.length, most: LONGEST_LIST } })
  }
  const issues: Issue[] = []
  const pairs = items.map((item, index) => {
    const halves = Array.isArray(item) ? item : typeof item === 'string' ? item.split(':') : []
    if (halves.length !== 2) {
      const path = `${key}.${index}`
      issues.push({ path, code: 'wrong-type', given: shortened(item), accepted: pairsNotation(field) })
      return []
    }
    return field.pairs.map((kind, half) => {
      const parsed = parseQuantity(halves[half], kind, options)
      if (parsed.ok) return parsed.valueSi
      issues.push({ path: `${key}.${index}.${half}`, ...parsed.issue })
      return Number.NaN
    })
  })
  return issues.length > 0 ? bad(...issues.slice(0, MOST_ISSUES)) : { value: pairs }
}

export function readPosition(key: string, value: unknown): Read {
  const [longitude, latitude, ...more] = (parts(value) ?? []).map(plainNumber)
  const given = Array.isArray(value) ? shortened(value.join(',')) : shortened(value)
  if (typeof longitude !== 'number' || typeof latitude !== 'number' || more.length > 0) {
    return bad({ path: key, code: 'wrong-type', given, accepted: POSITION_NOTATION })
  }
  const place: GeoPosition = [longitude, latitude]
  if (onEarth(longitude, latitude)) return { value: place }
  /** Latitude first is how most maps on a telephone read it out. */
  const swapped = onEarth(latitude, longitude)
    ? { candidates: [{ value: `${latitude},${longitude}`, means: 'longitude,latitude' }] }
    : {}
  return bad({ path: key, code: 'out-of-range', given, accepted: '-180…180,-90…90', ...swapped })
}

const onEarth = (longitude: number, latitude: number): boolean =>
  Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90
