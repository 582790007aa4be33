import { quantileInPlace } from '../numerics/select.ts'
import type { BoreLine, Reach } from './bore-line.ts'
import type { CrossingInput, OverKind, RateBook } from './crossing-input.ts'
import { isPavedAt } from './pits.ts'
import type { PitPart, PriceLine, PricePart } from './plan.ts'

export type PriceFacts = {
  readonly input: CrossingInput
  readonly rates: RateBook
  readonly line: BoreLine
  readonly pits: readonly PitPart[]
  readonly watchers: number
  /** Crew time of every draw; one that does not arrive carries its lost time and the second try. */
  readonly crewS: Float64Array
  readonly likelyCrewS: number
  /** Compressor running in the likely case, and its fuel. */
  readonly hammerS: number
  readonly fuelLitresPerS: number
  readonly pipeLengthM: number
}

const HOUR_S = 3600
/** Restoration is by the panel or patch at each pit, and for lawns too; bored reaches need none. */
function restorationAt(line: BoreLine, pit: PitPart): OverKind {
  const reach: Reach | undefined = line.reaches.find((r) => pit.atM >= r.fromM && pit.atM <= r.toM)
  return reach?.kind ?? 'lawn'
}

function fixedLines({
  input,
  rates,
  line,
  pits,
  hammerS,
  fuelLitresPerS,
  pipeLengthM,
}: PriceFacts): PriceLine[] {
  const shored = pits.filter((pit) => pit.shored).length
  const toExpose = (input.utilities ?? []).filter(
    (u) => u.stationM !== null && u.evidence !== 'exposed',
  ).length
  const permits = line.reaches.some((r) => r.kind === 'road') ? 1 : 0
  const walls = [input.ends.launch, input.ends.reception].filter((end) => end.kind === 'wall').length
  const litres = hammerS * fuelLitresPerS
  const money = (code: string, quantity: number, unit: string, each: number): PriceLine => ({
    code,
    quantity,
    unit,
    minorUnits: Math.round(quantity * each),
  })
  const restored = new Map<OverKind, number>()
  for (const pit of pits) {
    const kind = restorationAt(line, pit)
    restored.set(kind, (restored.get(kind) ?? 0) + 1)
  }
  return [
    money('mobilisation', 1, 'each', rates.mobilisationMinorUnits),
    money('pits', pits.length, 'each', rates.pitMinorUnits),
    money('shoring', shored, 'each', rates.shoringPerPitMinorUnits),
    money('potholes', toExpose, 'each', rates.potholeMinorUnits),
    money('permit', permits, 'each', rates.permitMinorUnits),
    money('wall-entry', walls, 'each', rates.wallEntryMinorUnits),
    money('pipe', pipeLengthM, 'm', rates.pipePerMetreMinorUnits),
    money('wear', line.lengthM, 'm', rates.wearPerMetreMinorUnits),
    money('fuel', litres, 'L', rates.fuelPerLitreMinorUnits),
    ...[...restored].map(([kind, count]) =>
      money(`restoration-${kind}`, count, 'each', rates.restorationMinorUnits[kind]),
    ),
  ].filter((each) => each.quantity > 0)
}

/** Price of the crossing alone: likely lines, and P50 and P80 over all draws, those that do not arrive included. */
export function pricePart(facts: PriceFacts): PricePart {
  const { rates, watchers } = facts
  const perSecond = (rates.crewPerHourMinorUnits + watchers * rates.watcherPerHourMinorUnits) / HOUR_S
  const fixed = fixedLines(facts)
  const fixedSum = fixed.reduce((sum, each) => sum + each.minorUnits, 0)
  const sell = (cost: number): number => (cost * (1 + rates.overheadFraction)) / (1 - rates.marginFraction)
  const totals = facts.crewS.map((seconds) => sell(fixedSum + seconds * perSecond))
  const p50MinorUnits = Math.round(quantileInPlace(totals, 0.5))
  const p80MinorUnits = Math.round(quantileInPlace(totals, 0.8))
  const step = rates.quoteStepMinorUnits
  const hours = facts.likelyCrewS / HOUR_S
  const lines: PriceLine[] = [
    ...fixed,
    { code: 'crew', quantity: hours, unit: 'h', minorUnits: Math.round(hours * rates.crewPerHourMinorUnits) },
  ]
  if (watchers > 0) {
    const minorUnits = Math.round(hours * watchers * rates.watcherPerHourMinorUnits)
    lines.push({ code: 'watchers', quantity: hours * watchers, unit: 'h', minorUnits })
  }
  const cost = lines.reduce((sum, each) => sum + each.minorUnits, 0)
  const overhead = Math.round(cost * rates.overheadFraction)
  const margin = Math.round(sell(cost)) - cost - overhead
  lines.push({ code: 'overhead', quantity: rates.overheadFraction, unit: 'of cost', minorUnits: overhead })
  lines.push({ code: 'margin', quantity: rates.marginFraction, unit: 'of price', minorUnits: margin })
  return {
    currency: rates.currency,
    book: rates.name,
    invented: rates.invented,
    p50MinorUnits,
    p80MinorUnits,
    quotedMinorUnits: Math.ceil(p80MinorUnits / step) * step,
    stepMinorUnits: step,
    belowMinimumCallOut: p80MinorUnits < rates.minimumCallOutMinorUnits,
    minimumCallOutMinorUnits: rates.minimumCallOutMinorUnits,
    lines,
  }
}

/** Ends that need a paved opening cut count with the pits; used by the site time too. */
export const pavedPits = (line: BoreLine, pits: readonly PitPart[]): number =>
  pits.filter((pit) => isPavedAt(line, pit.atM)).length
