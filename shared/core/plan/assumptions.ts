import type { Standing } from '../../sources/shape.ts'
import type { SourceKey } from '../../sources.ts'
import { DRIFT_DEFAULT_RAD_PER_SQRT_M } from '../line/path-covariance.ts'
import type { Assumption } from './plan.ts'

/**
 * Everything the plan takes for granted when nobody says otherwise, with its standing. Each one that a plan really
 * used is listed in its result; nothing else in the engine hides a default.
 */
type Default = {
  readonly value: number
  readonly unit: string
  readonly standing: Standing
  readonly source: SourceKey
}

const common = (value: number, unit: string): Default => ({
  value,
  unit,
  standing: 'common practice',
  source: 'CommonPractice',
})
const judged = (value: number, unit: string): Default => ({
  value,
  unit,
  standing: 'our judgement',
  source: 'OurJudgement',
})

const INCH_M = 0.0254
const MINUTE_S = 60

export const DEFAULTS = {
  /** Tool figures are proportions at this pressure at the tool. */
  'tool.ratedPressure': judged(650_000, 'Pa'),
  'air.temperature': judged(293.15, 'K'),
  'air.altitude': judged(0, 'm'),
  'air.humidity': judged(0, '1'),
  'air.exponent': { value: 1, unit: '1', standing: 'second hand', source: 'Fm5434' },
  'air.idleFuel': judged(0.4, '1'),
  'air.outletRise': judged(10, 'K difference'),
  'air.workShare': judged(0.3, '1'),
  /** Out over the length of the body, with a sight frame; by eye and torpedo level 8 to 10 mm. */
  'line.aimFrame': common(0.005, 'm'),
  'line.aimEye': common(0.009, 'm'),
  'line.drift': common(DRIFT_DEFAULT_RAD_PER_SQRT_M, 'rad/m^0.5'),
  'line.hitWindow': common(0.3, 'm'),
  'clearance.standard': common(12 * INCH_M, 'm'),
  'clearance.exposureError': judged(0.03, 'm'),
  'clearance.layoutError': judged(0, 'm'),
  'reading.firstMetre': common(0.01, 'm'),
  /** Of the depth, and never better than the length beside it. */
  'reading.sondeShare': common(0.05, '1'),
  'reading.sondeLeast': common(2 * INCH_M, 'm'),
  'reading.wireShare': judged(0.15, '1'),
  'reading.wireLeast': judged(0.15, 'm'),
  'reading.ear': common(0.3, 'm'),
  'pit.cradle': common(3.5 * INCH_M, 'm'),
  'pit.sump': common(0.05, 'm'),
  'pit.workingLength': common(0.75, 'm'),
  'pit.width': common(0.6, 'm'),
  'pit.exitLength': common(1, 'm'),
  'wall.stopShort': common(15 * INCH_M, 'm'),
  'giveUp.least': common(90 * MINUTE_S, 's'),
  'elapsed.ratioLow': common(1.3, '1'),
  'elapsed.ratioHigh': common(1.6, '1'),
  'elapsed.startLow': common(10 * MINUTE_S, 's'),
  'elapsed.startHigh': common(15 * MINUTE_S, 's'),
  'site.setUp': common(15 * MINUTE_S, 's'),
  'site.traffic': common(35 * MINUTE_S, 's'),
  'site.pit': common(25 * MINUTE_S, 's'),
  'site.pavedPit': common(20 * MINUTE_S, 's'),
  'site.shoring': common(30 * MINUTE_S, 's'),
  'site.aim': common(15 * MINUTE_S, 's'),
  'site.pothole': common(30 * MINUTE_S, 's'),
  'site.reinstatement': common(20 * MINUTE_S, 's'),
  'site.spread': judged(0.4, '1'),
  'pull.pushTime': common(5 * MINUTE_S, 's'),
  'pull.cableTime': common(10 * MINUTE_S, 's'),
  'pull.reverseShare': common(0.75, '1'),
  'pull.tailEachEnd': common(5 * 12 * INCH_M, 'm'),
  'pull.friction': common(0.5, '1'),
  'wear.bodyLifeMediumSoil': judged(1000, 'm'),
  'wear.ringLife': judged(150 * 3600, 's'),
  'wear.valveLife': judged(250 * 3600, 's'),
  'wear.hoseLife': judged(400 * 3600, 's'),
  'service.stripInterval': common(100 * 3600, 's'),
  'wear.spread': judged(0.4, '1'),
  'wear.startsFresh': judged(0, '1'),
  'price.secondTrySite': common(0.5, '1'),
} as const satisfies Record<string, Default>
export type DefaultName = keyof typeof DEFAULTS

/** Collects what was assumed, each once, in the order first used. */
export type Assumed = {
  /** The default's value, noted as used. */
  use(name: DefaultName): number
  /** Notes an assumption whose value was worked out on the spot. */
  note(assumption: Assumption): void
  /** The user's value if there is one, else the default, noted. */
  or(given: number | null, name: DefaultName): number
  readonly list: readonly Assumption[]
}

export function createAssumed(): Assumed {
  const list: Assumption[] = []
  const names = new Set<string>()
  const note = (assumption: Assumption): void => {
    if (names.has(assumption.name)) return
    names.add(assumption.name)
    list.push(assumption)
  }
  const use = (name: DefaultName): number => {
    const found = DEFAULTS[name]
    note({ name, value: found.value, unit: found.unit, standing: found.standing, source: found.source })
    return found.value
  }
  return { list, note, use, or: (given, name) => given ?? use(name) }
}
