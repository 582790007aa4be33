import type { Kind } from '../../shared/core/kinds.ts'
import { formatQuantity } from '../../shared/quantities/format-quantity.ts'
import { say } from '../state/unit-choice.ts'
import { wordsOfDottedName } from '../words/dotted-name.ts'
import { shown, shownNumber } from './shown.ts'

/** What the tail of a name says of its value; longer tails first, for each ends in a shorter one. */
const KIND_OF_TAIL: readonly (readonly [tail: string, kind: Kind])[] = [
  ['RadPerSqrtM', 'drift'],
  ['KgPerM3', 'density'],
  ['M3PerS', 'volumeFlow'],
  ['NPerM3', 'unitWeight'],
  ['KgPerS', 'massFlow'],
  ['MPerS', 'speed'],
  ['GaugePa', 'gaugePressure'],
  ['PerK', 'expansion'],
  ['PerM', 'perLength'],
  ['Rad', 'angle'],
  ['Pa', 'stress'],
  ['Kg', 'mass'],
  ['Hz', 'frequency'],
  ['M3', 'volume'],
  ['M2', 'area'],
  ['M', 'length'],
  ['S', 'duration'],
  ['N', 'force'],
  ['J', 'energy'],
  ['W', 'power'],
  ['K', 'temperature'],
]

const CROSS_SIZE = /^(bore|diameter|.*Diameter)$/

export type LooseValue = { readonly name: string; readonly value: string }

/** Three digits, as a barometer is read: 14.7 psia. */
const barometerText = (valuePa: number): string => {
  const { system } = say.value
  return formatQuantity(valuePa, 'absolutePressure', system, {
    unit: system === 'us' ? 'psia' : 'bara',
    digits: 3,
  })
}

function numberByTail(name: string, value: number): LooseValue {
  if (name === 'barometerPa') return { name: wordsOfDottedName('barometer'), value: barometerText(value) }
  const found = KIND_OF_TAIL.find(([tail]) => name.endsWith(tail) && name.length > tail.length)
  if (found === undefined) return { name: wordsOfDottedName(name), value: shownNumber(value) }
  const [tail, kind] = found
  const stem = name.slice(0, -tail.length)
  const isCrossSize = kind === 'length' && CROSS_SIZE.test(stem)
  return { name: wordsOfDottedName(stem), value: shown(value, isCrossSize ? 'diameter' : kind) }
}

const partsOf = (value: object): string =>
  Object.entries(value)
    .flatMap(([name, inner]) => valuesByTail(name, inner))
    .map((each) => `${each.name} ${each.value}`)
    .join(', ')

/** A value nobody declared a kind for, as its name tells; lists of things are numbered, things are told part by part. */
export function valuesByTail(name: string, value: unknown): readonly LooseValue[] {
  if (typeof value === 'number') return [numberByTail(name, value)]
  if (typeof value === 'string' || typeof value === 'boolean') {
    return [{ name: wordsOfDottedName(name), value: String(value) }]
  }
  if (Array.isArray(value)) {
    return value.flatMap((each, place) => valuesByTail(`${name}.${place}`, each))
  }
  if (value === null || typeof value !== 'object') return []
  return [{ name: wordsOfDottedName(name), value: partsOf(value) }]
}
