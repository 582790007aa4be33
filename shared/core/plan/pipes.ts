import type { PipeMaterial } from '../../tables/pipe-system.ts'
import type { PolyethyleneGrade } from '../../tables/pull-stress.ts'
import { done, type Issue, type Outcome } from '../outcome.ts'
import { bundleDiameter } from '../pipe/bundle-diameter.ts'
import { dryDrag } from '../pipe/dry-drag.ts'
import { enclosingDiameterM } from '../pipe/enclosing-circle.ts'
import { findPipe } from '../pipe/find-pipe.ts'
import { pipeMass } from '../pipe/pipe-mass.ts'
import { lowestPullLimit, pullInLimit } from '../pipe/pull-in-limit.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { CrossingInput, PipeInput } from './crossing-input.ts'
import type { PipePart } from './plan.ts'

/** A pipe as planned with. */
export type PipeFacts = {
  readonly label: string
  readonly system: string | null
  readonly outsideDiameterM: number
  readonly wallM: number | null
  readonly largestDiameterM: number
  readonly count: number
  readonly material: PipeMaterial | null
  readonly grade: PolyethyleneGrade | null
  readonly isJointed: boolean
  readonly massKgPerM: number | null
  readonly coilLengthsM: readonly number[]
}

/** Density where a weight is worked out of the wall, and how much heavier than the least wall it runs. */
const BY_MATERIAL: Partial<Record<PipeMaterial, { densityKgPerM3: number; wallAllowance: number }>> = {
  pe: { densityKgPerM3: 955, wallAllowance: 1.06 },
  copper: { densityKgPerM3: 8940, wallAllowance: 1 },
  steel: { densityKgPerM3: 7850, wallAllowance: 1 },
}

function bareDiameter(pipe: PipeInput): PipeFacts {
  const outsideDiameterM = pipe.outsideDiameterM ?? 0
  return {
    label: 'by-diameter',
    system: null,
    outsideDiameterM,
    wallM: null,
    largestDiameterM: Math.max(outsideDiameterM, pipe.largestDiameterM ?? 0),
    count: pipe.count,
    material: pipe.material === null ? null : 'pe',
    grade: pipe.material as PolyethyleneGrade | null,
    isJointed: false,
    massKgPerM: null,
    coilLengthsM: [],
  }
}

/** Finds a pipe in the tables, or takes the outside diameter given. */
function pipeFacts(pipe: PipeInput, index: number, assumed: Assumed): Outcome<PipeFacts> {
  if (pipe.system === null || pipe.size === null) return done(bareDiameter(pipe))
  const found = findPipe(pipe.system, pipe.size, pipe.wall)
  if (!found.ok)
    return { ok: false, issues: found.issues.map((i) => ({ ...i, path: `pipes.${index}.${i.path}` })) }
  const { system, size, wall, wallM, wallAssumed, massKgPerM, largestDiameterM, coilLengthsM } = found.value
  const judged = { unit: '', standing: 'our judgement', source: 'OurJudgement' } as const
  if (wallAssumed) assumed.note({ name: `pipes.${index}.wall`, value: wall, ...judged })
  const grade = (pipe.material as PolyethyleneGrade | null) ?? system.resin ?? null
  if (pipe.material === null && grade !== null)
    assumed.note({ name: `pipes.${index}.material`, value: grade, ...judged })
  const outsideDiameterM = pipe.outsideDiameterM ?? found.value.outsideDiameterM
  const weighed = BY_MATERIAL[system.material]
  return done({
    label: `${system.id} ${size} ${wall}`,
    system: system.id,
    outsideDiameterM,
    wallM,
    largestDiameterM: Math.max(largestDiameterM, pipe.largestDiameterM ?? 0),
    count: pipe.count,
    material: system.material,
    grade,
    isJointed: !system.joined.includes('coiled'),
    massKgPerM:
      massKgPerM ??
      (weighed ? pipeMass.fn({ outsideDiameterM, wallM, lengthM: 1, ...weighed }).massKg : null),
    coilLengthsM,
  })
}

export function findPipes(input: CrossingInput, assumed: Assumed): Outcome<readonly PipeFacts[]> {
  const issues: Issue[] = []
  const pipes: PipeFacts[] = []
  input.pipes.forEach((pipe, index) => {
    const found = pipeFacts(pipe, index, assumed)
    if (found.ok) pipes.push(found.value)
    else issues.push(...found.issues)
  })
  return issues.length > 0 ? { ok: false, issues } : done(pipes)
}

const TWELVE_HOURS_S = 12 * 3600

function limitReason(pipe: PipeFacts, limitN: number | null): PipePart['pullLimitReason'] {
  if (limitN !== null) return null
  if (pipe.isJointed) return 'jointed'
  return pipe.material === 'pe' ? 'no-wall' : 'enter-your-own'
}

/** The lower of the two published bases for polyethylene; nothing published for anything else. */
function pullLimitN(pipe: PipeFacts, trace: Trace, about: string): number | null {
  if (pipe.grade === null || pipe.wallM === null) return null
  const dimensionRatio = pipe.outsideDiameterM / pipe.wallM
  const given = { outsideDiameterM: pipe.outsideDiameterM, dimensionRatio, durationS: TWELVE_HOURS_S }
  trace.run(pullInLimit, { ...given, material: pipe.grade }, about)
  return lowestPullLimit(pipe.outsideDiameterM, dimensionRatio, pipe.grade, TWELVE_HOURS_S).forceN
}

/** What each pipe may be pulled with, what the pull is likely to be, and the coil it takes without a joint. */
export function pipesPart(
  input: CrossingInput,
  pipes: readonly PipeFacts[],
  lengthM: number,
  assumed: Assumed,
  trace: Trace,
): PipePart[] {
  const coilNeededM = lengthM + 2 * assumed.use('pull.tailEachEnd')
  const friction = assumed.use('pull.friction')
  return pipes.map((pipe, index): PipePart => {
    const about = `pipe ${index + 1}`
    const limitN = pullLimitN(pipe, trace, about)
    const longestM = Math.max(0, ...pipe.coilLengthsM)
    return {
      pipe: pipe.label,
      outsideDiameterM: pipe.outsideDiameterM,
      wallM: pipe.wallM,
      count: pipe.count,
      pullLimitN: limitN,
      pullLimitReason: limitReason(pipe, limitN),
      pullEstimateN:
        pipe.massKgPerM === null
          ? null
          : trace.run(dryDrag, { massKg: pipe.massKgPerM * lengthM, friction }, about).forceN,
      coilNeededM,
      coilLengthM: input.pipes[index]?.coilLengthM ?? (longestM > 0 ? longestM : null),
    }
  })
}

/** Every pipe of the bundle by its own largest size, each as often as it is pulled. */
const bundleOf = (pipes: readonly PipeFacts[]): number[] =>
  pipes.flatMap((pipe) => Array.from({ length: pipe.count }, () => pipe.largestDiameterM))

/** Diameter of the smallest circle round the bundle. */
export function bundleDiameterM(pipes: readonly PipeFacts[], trace: Trace): number {
  const sizes = bundleOf(pipes)
  const [first] = sizes
  if (first !== undefined && sizes.length <= 19 && sizes.every((size) => size === first)) {
    return trace.run(bundleDiameter, { outsideDiameterM: first, count: sizes.length }, 'bundle').diameterM
  }
  return enclosingDiameterM(sizes)
}
