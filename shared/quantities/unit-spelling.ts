import type { Kind } from '../core/kinds.ts'
import { DIMENSIONS_OF_KIND } from './kind-units.ts'
import type { Unit } from './units.ts'
import { UNITS } from './units.ts'

// biome-ignore format: a table of words reads better in rows
/** Words people write in full, as the symbol the unit table has; both sides of the water. */
const WORDS: Readonly<Record<string, string>> = {
  feet: 'ft', foot: 'ft', fts: 'ft', inch: 'in', inches: 'in', ins: 'in', yard: 'yd', yards: 'yd', yds: 'yd',
  mile: 'mi', miles: 'mi', metre: 'm', metres: 'm', meter: 'm', meters: 'm',
  millimetre: 'mm', millimetres: 'mm', millimeter: 'mm', millimeters: 'mm',
  centimetre: 'cm', centimetres: 'cm', centimeter: 'cm', centimeters: 'cm',
  kilometre: 'km', kilometres: 'km', kilometer: 'km', kilometers: 'km',
  second: 's', seconds: 's', sec: 's', secs: 's', minute: 'min', minutes: 'min', mins: 'min',
  hour: 'h', hours: 'h', hr: 'h', hrs: 'h', day: 'd', days: 'd',
  pound: 'lb', pounds: 'lb', lbs: 'lb', ounce: 'oz', ounces: 'oz', gram: 'g', grams: 'g', kgs: 'kg', kilograms: 'kg',
  litre: 'L', litres: 'L', liter: 'L', liters: 'L', l: 'L', ltr: 'L', gallon: 'gal', gallons: 'gal', gals: 'gal',
  ml: 'mL', joule: 'J', joules: 'J', newton: 'N', newtons: 'N', watt: 'W', watts: 'W',
  degree: '°', degrees: '°', degs: '°', radian: 'rad', radians: 'rad', bars: 'bar',
  percent: '%', pct: '%', blows: 'blow', celsius: 'C', fahrenheit: 'F', kelvin: 'K', horsepower: 'hp',
}

/** One spelling for one unit: `cu. ft per minute` → `ft3/min`, `deg F` → `°F`. */
export function plainUnit(text: string): string {
  return text
    .trim()
    .replace(/\^([23])/g, '$1')
    .replace(/(?:√|sqrt\s*\(?)\s*m\)?$/i, 'm^0.5')
    .replace(/\s*[·*•⋅×]\s*/g, '-')
    .replace(/([a-z])\.(?=\s|$|\/)/gi, '$1')
    .replace(/(?:^|\s+)per\s+/gi, '/')
    .replace(/\s*\/\s*/g, '/')
    .replace(/[A-Za-z]+/g, (word) => WORDS[word.toLowerCase()] ?? word)
    .replace(/\b(?:sq|square)\s*(ft|in|yd|mm|cm|m)\b/gi, (_, length: string) => `${length}2`)
    .replace(/\b(?:cu|cubic)\s*(ft|in|yd|mm|cm|m)\b/gi, (_, length: string) => `${length}3`)
    .replace(/(?:\bdeg|°)\s*([cfk])\b/gi, (_, letter: string) =>
      /k/i.test(letter) ? 'K' : `°${letter.toUpperCase()}`,
    )
    .replace(/\s+/g, ' ')
    .trim()
}

export type UnitMatch =
  | { readonly found: 'one'; readonly unit: Unit }
  | { readonly found: 'several'; readonly units: readonly Unit[] }
  | { readonly found: 'none' }

const BY_NAME = new Map<string, Unit[]>()
const BY_SMALL_NAME = new Map<string, Unit[]>()
for (const each of UNITS) {
  for (const name of each.names) {
    push(BY_NAME, name, each)
    push(BY_SMALL_NAME, name.toLowerCase(), each)
  }
}

function push(map: Map<string, Unit[]>, key: string, value: Unit): void {
  const list = map.get(key)
  if (list) list.push(value)
  else map.set(key, [value])
}

/**
 * Exact symbols first (MPa is not mPa); letters of another size only when one unit answers to them.
 * `wanted` keeps the search to the units a field takes.
 */
function match(name: string, wanted: (unit: Unit) => boolean): UnitMatch {
  const spellings = [...new Set([name, plainUnit(name)])]
  for (const [map, fold] of [
    [BY_NAME, (text: string) => text],
    [BY_SMALL_NAME, (text: string) => text.toLowerCase()],
  ] as const) {
    for (const spelling of spellings) {
      const units = [...new Set(map.get(fold(spelling))?.filter(wanted))]
      const [first] = units
      if (first) return units.length === 1 ? { found: 'one', unit: first } : { found: 'several', units }
    }
  }
  return { found: 'none' }
}

export const matchUnit = (name: string, kind: Kind): UnitMatch =>
  match(name, (unit) => DIMENSIONS_OF_KIND[kind].includes(unit.dimension))

/** Whether the words name a unit of any kind at all. */
export const isUnitOfAnyKind = (name: string): boolean =>
  name !== '' && match(name, () => true).found !== 'none'

/** A unit by its exact id, for a kind; null when the kind has none such. For our own tables, not for typed text. */
export function unitOfKind(id: string, kind: Kind): Unit | null {
  const found = matchUnit(id, kind)
  return found.found === 'one' ? found.unit : null
}

/** Names of the units a kind takes, for the nearest-word search. */
export const namesOfKind = (kind: Kind): readonly string[] =>
  UNITS.filter((unit) => DIMENSIONS_OF_KIND[kind].includes(unit.dimension)).flatMap((unit) => [...unit.names])
