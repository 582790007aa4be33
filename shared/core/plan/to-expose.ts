import type { CrossingInput, UtilityInput, UtilityKind } from './crossing-input.ts'
import { reachBeside } from './line-extent.ts'
import type { ToExpose } from './path-parts.ts'
import type { ClearancePart, ShotPart } from './plan.ts'

/** What hurts most when struck stands first. */
const FIRST_KINDS: readonly UtilityKind[] = [
  'gas',
  'electric',
  'oil',
  'propane',
  'steam',
  'lighting',
  'telecom',
  'water',
  'sewer',
  'storm',
  'reclaimed',
  'septic',
  'irrigation',
  'other',
]

/** A gravity line may be proved another way; every other line is opened up. */
const isSettled = ({ evidence, kind, depth, diameterM }: UtilityInput): boolean => {
  if (evidence === 'exposed') return depth !== null && diameterM !== null
  return evidence === 'proved' && (kind === 'sewer' || kind === 'storm')
}

/** Shortest first; where nobody can say, before every figure. */
const pressing = ({ shortM }: ToExpose): number => shortM ?? Number.POSITIVE_INFINITY

const worstOf = (all: readonly ClearancePart[]): ClearancePart | null =>
  all.reduce<ClearancePart | null>((worst, each) => {
    if (worst === null || each.shortM === null) return each
    return worst.shortM !== null && each.shortM > worst.shortM ? each : worst
  }, null)

/** Where to dig: at a crossing; beside a line alongside at the far end of each bore it runs beside. */
const openAt = (utility: UtilityInput, shots: readonly ShotPart[]): readonly number[] =>
  utility.stationM === null
    ? shots.flatMap((shot) => reachBeside(utility, shot)?.toM ?? [])
    : [utility.stationM]

/** Lines still to be opened up: by how much room is short, then by what they carry, then as they are met. */
export function toExposePart(
  { utilities }: CrossingInput,
  shots: readonly ShotPart[],
  tapeErrorM: number,
): ToExpose[] {
  const found = (utilities ?? []).flatMap((utility, index): ToExpose[] => {
    if (isSettled(utility)) return []
    const worst = worstOf(shots.flatMap((shot) => shot.clearances.filter((each) => each.utility === index)))
    const isDepthTold = utility.stationM === null || utility.depth !== null
    return [
      {
        utility: index,
        kind: utility.kind,
        atM: openAt(utility, shots),
        shortM: isDepthTold ? (worst?.shortM ?? null) : null,
        savesM: Math.max(0, (worst?.parts.exposureM ?? tapeErrorM) - tapeErrorM),
      },
    ]
  })
  const kindOf = (each: ToExpose): number => FIRST_KINDS.indexOf(each.kind)
  const order = (a: number, b: number): number => (a === b ? 0 : a - b)
  return [...found].sort(
    (a, b) => order(pressing(b), pressing(a)) || kindOf(a) - kindOf(b) || (a.atM[0] ?? 0) - (b.atM[0] ?? 0),
  )
}
