import { sptFineSand } from '../ground/spt-fine-sand.ts'
import { sptStressCorrection } from '../ground/spt-stress-correction.ts'
import { effectiveStressPa } from '../ground/tip-pressure.ts'
import { done, type Outcome } from '../outcome.ts'
import { createTrace } from '../trace.ts'
import { createAssumed } from './assumptions.ts'
import type { CrossingInput } from './crossing-input.ts'
import type { Agreement, CountCorrection, SaidOfGround } from './ground-answers.ts'
import { resolveCrossing } from './resolve-crossing.ts'
import type { Stretch } from './stretches.ts'

/** One apart by this much on the scale of blow counts, and by three blows, is more than two tests of one soil differ. Our judgement. */
const APART_RATIO = 1.6
const APART_BLOWS = 3

function agreement(n: number, usedN: number): Agreement {
  const ratio = (n + 1) / (usedN + 1)
  if (Math.abs(n - usedN) < APART_BLOWS || (ratio < APART_RATIO && ratio > 1 / APART_RATIO)) return 'agrees'
  return n > usedN ? 'harder' : 'softer'
}

/** Sands in which water holds the sampler up. */
const FINE = ['SM', 'SP-SM', 'SW-SM']
/** Safer than 2 at the depth of a bore. */
const CAP = 1.7

function corrections(stretch: Stretch, sptN: number | null): readonly CountCorrection[] {
  const { state, axisDepthM, waterTableM } = stretch
  if (sptN === null || state.family === 'clay') return []
  const verticalStressPa = Math.max(1, effectiveStressPa(state.unitWeightNPerM3, axisDepthM, waterTableM))
  const { factor } = sptStressCorrection.fn({ verticalStressPa, cap: CAP })
  const isFine = FINE.includes(state.uscs) && waterTableM !== null && waterTableM <= axisDepthM
  const fineN = sptFineSand.fn({ sptN }).corrected
  return [
    { code: 'overburden', fromN: sptN, toN: factor * sptN, factor },
    ...(isFine && fineN < sptN
      ? [{ code: 'fine-sand' as const, fromN: sptN, toN: fineN, factor: null }]
      : []),
  ]
}

function saidOf(stretch: Stretch, input: CrossingInput): SaidOfGround {
  const { state, ground } = stretch
  const used = { by: state.decidedBy, n: state.equivalentN, agreement: 'used' as const }
  const evidence = [
    used,
    ...state.others.map(({ n, by }) => ({ by, n, agreement: agreement(n, state.equivalentN) })),
  ]
  return {
    ground,
    uscs: state.uscs,
    stateCode: state.stateCode,
    evidence,
    isDisputed: evidence.some((each) => each.agreement === 'harder' || each.agreement === 'softer'),
    corrections: corrections(stretch, input.ground[ground]?.sptN ?? null),
  }
}

/**
 * Everything that was said of how hard the ground is, stretch by stretch: what the plan goes by, and whether the rest is of
 * one mind with it. A disagreement is shown, never averaged away.
 */
export function saidOfGround(input: CrossingInput): Outcome<readonly SaidOfGround[]> {
  const known = resolveCrossing(input, createAssumed(), createTrace())
  if (!known.ok) return known
  const first = new Map<number, Stretch>()
  for (const stretch of known.value.stretches) {
    if (!first.has(stretch.ground)) first.set(stretch.ground, stretch)
  }
  return done([...first.values()].map((stretch) => saidOf(stretch, input)))
}
