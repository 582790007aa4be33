import type { SourceKey } from '../../sources.ts'
import type { BoreLine } from './bore-line.ts'
import type { OverKind } from './crossing-input.ts'
import type { BorePart } from './plan.ts'

type CoverRule = {
  /** Below this many bore diameters of cover the plan is held; between the two, checked. */
  readonly holdBelowD: number
  readonly checkBelowD: number
  readonly source: SourceKey
}

/**
 * Cover by what lies over the bore, in bore diameters. About 3 D is where the roof lifts as a block; about 5 D keeps a
 * lawn whole; hard surfaces want 10 to 12 D and the permit. Common practice, no source; an owner's permit replaces it.
 */
export const COVER_RULES: Readonly<Record<OverKind, CoverRule>> = {
  lawn: { holdBelowD: 3, checkBelowD: 5, source: 'CommonPractice' },
  ditch: { holdBelowD: 3, checkBelowD: 5, source: 'CommonPractice' },
  walk: { holdBelowD: 5, checkBelowD: 10, source: 'CommonPractice' },
  drive: { holdBelowD: 5, checkBelowD: 10, source: 'CommonPractice' },
  pavers: { holdBelowD: 10, checkBelowD: 12, source: 'CommonPractice' },
  slab: { holdBelowD: 10, checkBelowD: 12, source: 'CommonPractice' },
  road: { holdBelowD: 10, checkBelowD: 12, source: 'CommonPractice' },
  /** Nobody has said what it is: the strictest rule. */
  other: { holdBelowD: 10, checkBelowD: 12, source: 'CommonPractice' },
}

type Cover = Pick<BorePart, 'coverM' | 'coverRatio' | 'coverAtM' | 'coverByReach'>

/** Least cover between two stations: ground and axis are straight between breaks, so the least sits at a break. */
function leastCover(
  line: BoreLine,
  fromM: number,
  toM: number,
  radiusM: number,
): { atM: number; coverM: number } {
  let atM = fromM
  let coverM = Number.POSITIVE_INFINITY
  for (const stationM of [fromM, ...line.breaksM.filter((m) => m > fromM && m < toM), toM]) {
    const here = line.axisDepthM(stationM) - radiusM
    if (here < coverM) {
      coverM = here
      atM = stationM
    }
  }
  return { atM, coverM }
}

/**
 * Between the reaches somebody described lies lawn; where nobody described any, nobody knows what is over the bore, and
 * leaving `over` out of a file must not make its rule milder.
 */
function withGapsAsLawn(line: BoreLine): { fromM: number; toM: number; kind: OverKind }[] {
  const reaches = [...line.reaches].sort((a, b) => a.fromM - b.fromM)
  if (reaches.length === 0) return [{ fromM: 0, toM: line.lengthM, kind: 'other' }]
  const all: { fromM: number; toM: number; kind: OverKind }[] = []
  let atM = 0
  for (const reach of reaches) {
    if (reach.fromM > atM) all.push({ fromM: atM, toM: reach.fromM, kind: 'lawn' })
    all.push(reach)
    atM = Math.max(atM, reach.toM)
  }
  if (atM < line.lengthM) all.push({ fromM: atM, toM: line.lengthM, kind: 'lawn' })
  return all
}

/** Cover along the bore and what the rule for each surface says of it. */
export function coverPart(line: BoreLine, boreDiameterM: number): Cover {
  const radiusM = boreDiameterM / 2
  const least = leastCover(line, 0, line.lengthM, radiusM)
  const coverByReach = withGapsAsLawn(line).map((reach) => {
    const { coverM } = leastCover(line, reach.fromM, reach.toM, radiusM)
    const rule = COVER_RULES[reach.kind]
    const coverRatio = coverM / boreDiameterM
    const verdict: 'ok' | 'check' | 'hold' =
      coverRatio < rule.holdBelowD ? 'hold' : coverRatio < rule.checkBelowD ? 'check' : 'ok'
    return { ...reach, coverM, coverRatio, verdict, wantedM: rule.checkBelowD * boreDiameterM }
  })
  return { coverM: least.coverM, coverRatio: least.coverM / boreDiameterM, coverAtM: least.atM, coverByReach }
}
