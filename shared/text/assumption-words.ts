import type { Kind } from '../core/kinds.ts'
import type { Assumption } from '../core/plan/plan.ts'
import { formatQuantity } from '../quantities/format-quantity.ts'
import { bySystem, plainCode } from './by-system.ts'
import { EN_ASSUMED, EN_ASSUMPTIONS } from './en-assumptions.ts'
import { fill, templateOf } from './fill.ts'
import type { BothLanguages, Say } from './language.ts'
import { withSpanish } from './learned-languages.ts'
import { wallName } from './pipe-name.ts'
import { knowsWord, planWord } from './plan-words.ts'
import { saidQuantity, saidRoughly, saidTapeDepth } from './say-quantity.ts'
import { soilGroupName } from './soil-words.ts'

export const ASSUMPTION_TEMPLATES: BothLanguages<keyof typeof EN_ASSUMPTIONS> = withSpanish(
  EN_ASSUMPTIONS,
  'assumptions',
)
const ASSUMED: BothLanguages<keyof typeof EN_ASSUMED> = withSpanish(EN_ASSUMED, 'assumed')

/** `ground.1.sptN` → the pattern and the number a person counts by. */
function patternOf(name: string): { readonly pattern: string; readonly number: number } | null {
  const found = /^(\w+)\.(\d+)\.(.+)$/.exec(name)
  return found ? { pattern: `${found[1]}.*.${found[3]}`, number: Number(found[2]) + 1 } : null
}

/** What was taken for granted: "Setting up", "How hard, ground 2". */
export function assumptionName(name: string, say: Say): string {
  const templates = ASSUMPTION_TEMPLATES[say.lang]
  const numbered = patternOf(name)
  const template = templateOf(templates, numbered?.pattern ?? name)
  return template === null
    ? plainCode(name)
    : fill(template, numbered === null ? {} : { number: numbered.number }, say)
}

/** Kinds by SI unit, where the name says nothing else. */
const KIND_OF_UNIT: Readonly<Record<string, Kind>> = {
  m: 'length',
  s: 'duration',
  Pa: 'stress',
  K: 'temperature',
  rad: 'angle',
  'rad/m^0.5': 'drift',
  kg: 'mass',
  J: 'energy',
  Hz: 'frequency',
  'm3/s': 'volumeFlow',
}
const KIND_OF_NAME: Readonly<Record<string, Kind>> = {
  'tool.ratedPressure': 'gaugePressure',
  'air.altitude': 'altitude',
  'air.outletRise': 'temperatureDifference',
  'expander.diameter': 'diameter',
}
/** Read off a tape, in inches to six feet. */
const TAPE = /^(clearance|pit|wall|line|reading)\.|^shots\.\d+\.depth$|\.ownerClearance$/
/** Usual sizes that nobody measures: said roughly, and as roughly meant. */
const USUAL_SIZES = ['pit.width', 'pit.exitLength', 'pit.workingLength', 'line.hitWindow', 'tool.length']
const ABOUT = { en: 'about', es: 'unos' } as const
/** A length so roughly known that two digits say more than they should: 3300 ft, 1000 m. */
const ROUGH_LENGTHS = ['wear.bodyLifeMediumSoil']
const FEET_AND_METRES = { us: 'ft', si: 'm' } as const
/** Said in percent. */
const SHARES = [
  'air.humidity',
  'air.idleFuel',
  'air.workShare',
  'site.spread',
  'wear.spread',
  'wear.startsFresh',
  'price.secondTrySite',
  'pull.reverseShare',
  'reading.sondeShare',
  'reading.wireShare',
]
const TIMES = ['elapsed.ratioLow', 'elapsed.ratioHigh']

/** A single letter is a wall of copper; every other wall says by itself what it is. */
const COPPER_WALL = /^[A-Z]$/

/** A value that is a code, in words; what somebody typed stands as it is. */
function assumedWord(name: string, value: string, say: Say): string {
  const words = templateOf(ASSUMED[say.lang], value)
  if (words !== null) return bySystem(words, say.system)
  if (name.startsWith('ends.')) return planWord('end', value, say)
  if (name.endsWith('.uscs')) return soilGroupName(value, say)
  if (name.endsWith('.wall')) return wallName(value, COPPER_WALL.test(value) ? 'copper-b88' : '', say)
  if (name.endsWith('.material')) return value.toUpperCase()
  if (knowsWord('ground', value)) return planWord('ground', value, say).replace('a/o', 'o')
  return value
}

/** The value taken, with its unit or in words. */
export function assumedValue(
  { name, value, unit }: Pick<Assumption, 'name' | 'value' | 'unit'>,
  say: Say,
): string {
  if (typeof value === 'string') return assumedWord(name, value, say)
  if (SHARES.includes(name)) return `${Math.round(value * 100)} %`
  if (TIMES.includes(name)) return `${value} ×`
  if (ROUGH_LENGTHS.includes(name))
    return formatQuantity(value, 'length', say.system, { unit: FEET_AND_METRES[say.system], digits: 2 })
  if (USUAL_SIZES.includes(name)) return `${ABOUT[say.lang]} ${saidRoughly(value, say)}`
  if (unit === 'm' && TAPE.test(name)) return saidTapeDepth(value, say)
  const kind = KIND_OF_NAME[name] ?? KIND_OF_UNIT[unit]
  return kind === undefined ? saidQuantity(value, 'ratio', say) : saidQuantity(value, kind, say)
}
