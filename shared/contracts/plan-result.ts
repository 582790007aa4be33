import { z } from 'zod'
import {
  END_KINDS,
  OBSERVATION_METHODS,
  OVER_KINDS,
  PULL_METHODS,
  UTILITY_KINDS,
} from '../core/plan/crossing-input.ts'
import type { Plan } from '../core/plan/plan.ts'
import { SOURCES, type SourceKey } from '../sources.ts'
import { airPart as air } from './air-result.ts'
import { learnedPart } from './learned.ts'

/** The result of a plan, underlane/plan@1: names carry their SI unit, what does not exist is null with a reason beside it. */
const number = z.number()
const share = z.number().min(0).max(1)
const spread = z.strictObject({ p10: number, p50: number, p90: number })
const middleAndBad = z.strictObject({ p50: number, p90: number })
const source = z.enum(Object.keys(SOURCES) as [SourceKey, ...SourceKey[]])
const standing = z.enum(['published', 'second hand', 'common practice', 'our judgement', 'your value'])
const values = z.record(z.string(), z.union([z.string(), number]))

const bore = z.strictObject({
  lengthM: number,
  diameterM: number,
  bundleDiameterM: number,
  radialGapM: number,
  ratio: number,
  fit: z.enum(['tight', 'tow-tight', 'normal', 'wide', 'very-wide']),
  annulusM3PerM: number,
  coverM: number,
  coverRatio: number,
  coverAtM: number,
  coverByReach: z.array(
    z.strictObject({
      kind: z.enum(OVER_KINDS),
      fromM: number,
      toM: number,
      coverM: number,
      coverRatio: number,
      verdict: z.enum(['ok', 'check', 'hold']),
      wantedM: number,
    }),
  ),
})

const run = z.strictObject({
  advanceMPerS: spread,
  hammerTimeS: spread.nullable(),
  boreTimeS: spread.nullable(),
  crossingTimeS: spread.nullable(),
  timeReason: z.literal('too-few-arrive').nullable(),
  giveUpTimeS: number,
  arrivalProbability: share,
  refusalProbability: share,
  blowRateHz: number,
  blowEnergyJ: number,
  setPerBlowM: number,
})

const deviation = z.strictObject({
  lateralM: middleAndBad,
  verticalM: middleAndBad,
  hitProbability: share,
  windowM: number,
  gradeProbability: share.nullable(),
})

const clearance = z.strictObject({
  utility: z.number().int(),
  kind: z.enum(UTILITY_KINDS),
  stationM: number.nullable(),
  axisDepthM: number,
  separationM: number.nullable(),
  gapM: number.nullable(),
  requiredM: number,
  shortM: number.nullable(),
  parts: z.strictObject({
    standardM: number,
    toolRadiusM: number,
    driftM: number,
    exposureM: number,
    layoutM: number,
  }),
  driftFrom: z.strictObject({ by: z.enum(['launch', 'hole', ...OBSERVATION_METHODS]), stationM: number }),
  displacementM: number.nullable(),
  ppvMPerS: number.nullable(),
  contactProbability: share.nullable(),
  reason: z.enum(['depth-not-measured', 'no-depth', 'no-size', 'parallel']).nullable(),
  wayOut: z
    .strictObject({
      direction: z.enum(['deeper', 'shallower']),
      moveM: number,
      otherEndShortM: number.nullable(),
    })
    .nullable(),
})

const path = z.strictObject({
  points: z.array(
    z.strictObject({
      stationM: number,
      rightM: number,
      lowM: number,
      sidewaysP90M: number,
      verticalP90M: number,
    }),
  ),
  observations: z.array(
    z.strictObject({
      observation: z.number().int(),
      method: z.enum(OBSERVATION_METHODS),
      stationM: number,
      rightM: number.nullable(),
      lowM: number.nullable(),
      errorM: number,
      isOverruled: z.boolean(),
    }),
  ),
  wideningSideways: number,
  wideningVertical: number,
})

const proposal = z.strictObject({
  code: z.enum(['other-end', 'deeper', 'shallower', 'extra-pit']),
  shot: z.number().int(),
  stationM: number.nullable(),
  moveM: number.nullable(),
  shortM: number,
  shortAfterM: number,
})

const toExpose = z.strictObject({
  utility: z.number().int(),
  kind: z.enum(UTILITY_KINDS),
  atM: z.array(number),
  shortM: number.nullable(),
  savesM: number,
})

const shot = z.strictObject({
  fromM: number,
  toM: number,
  depthFromM: number,
  depthToM: number,
  run,
  deviation,
  path,
  clearances: z.array(clearance),
  stretches: z.array(
    z.strictObject({
      fromM: number,
      toM: number,
      uscs: z.string(),
      stateCode: z.string(),
      setPerBlowM: number,
      advanceMPerS: number,
      tipResistancePa: number,
      buriedToGripM: number.nullable(),
    }),
  ),
})

const pit = z.strictObject({
  atM: number,
  serves: z.enum(['launch', 'middle', 'reception']),
  kind: z.enum(END_KINDS),
  floorDepthM: number,
  lengthM: number,
  widthM: number,
  needsLadder: z.boolean(),
  needsProtection: z.boolean(),
  shored: z.boolean(),
  volumeM3: number,
})

const pipe = z.strictObject({
  pipe: z.string(),
  outsideDiameterM: number,
  wallM: number.nullable(),
  count: z.number().int(),
  pullLimitN: number.nullable(),
  pullLimitReason: z.enum(['enter-your-own', 'jointed', 'no-wall']).nullable(),
  pullEstimateN: number.nullable(),
  coilNeededM: number,
  coilLengthM: number.nullable(),
})

const price = z.strictObject({
  currency: z.string(),
  book: z.string(),
  invented: z.boolean(),
  p50MinorUnits: z.number().int(),
  p80MinorUnits: z.number().int(),
  quotedMinorUnits: z.number().int(),
  stepMinorUnits: z.number().int(),
  belowMinimumCallOut: z.boolean(),
  minimumCallOutMinorUnits: z.number().int(),
  lines: z.array(
    z.strictObject({ code: z.string(), quantity: number, unit: z.string(), minorUnits: z.number().int() }),
  ),
})

const working = z.strictObject({
  relation: z.string(),
  about: z.string(),
  inputs: z.record(z.string(), z.unknown()),
  outputs: z.record(z.string(), z.unknown()),
  sources: z.array(source),
  notes: z.array(
    z.strictObject({
      code: z.literal('outside-range'),
      input: z.string(),
      value: number,
      min: number.nullable(),
      max: number.nullable(),
    }),
  ),
})

const parts = {
  bore,
  air,
  run,
  shots: z.array(shot),
  pits: z.array(pit),
  crew: z.strictObject({ people: z.number().int(), watchers: z.number().int() }),
  ground: z.strictObject({
    heaveM: spread,
    profile: z.array(z.strictObject({ offsetM: number, heaveM: number })),
    atM: number,
    breakout: z.boolean(),
  }),
  deviation,
  clearances: z.array(clearance),
  toExpose: z.array(toExpose),
  proposals: z.array(proposal),
  learned: z.exactOptional(z.array(learnedPart)),
  pipes: z.array(pipe),
  pull: z.strictObject({
    method: z.enum(PULL_METHODS).nullable(),
    others: z.array(z.strictObject({ method: z.enum(PULL_METHODS), why: z.string() })),
  }),
  wear: z.array(
    z.strictObject({
      part: z.string(),
      usedFraction: number,
      remainingS: spread.nullable(),
      dueDuringThisCrossingProbability: share,
    }),
  ),
  service: z.strictObject({ nextDueS: spread.nullable(), part: z.string(), tasks: z.array(z.string()) }),
  price: z.exactOptional(price),
  checklist: z.array(z.strictObject({ id: z.string(), when: z.string(), source })),
  cautions: z.array(
    z.strictObject({ id: z.string(), severity: z.enum(['danger', 'warning', 'advice']), source, values }),
  ),
  release: z.strictObject({
    status: z.enum(['hold', 'check']),
    reasons: z.array(
      z.strictObject({ code: z.string(), kind: z.enum(['rule', 'missing', 'advice']), values }),
    ),
  }),
  assumptions: z.array(
    z.strictObject({
      name: z.string(),
      value: z.union([number, z.string()]),
      unit: z.string(),
      standing,
      source,
    }),
  ),
  workings: z.array(working),
}

/** The parts alone; a compile-time promise that the engine's plan and this contract say the same. */
export const planParts = z.strictObject(parts) satisfies z.ZodType<Plan>

export const planResult = z.strictObject({
  schema: z.literal('underlane/plan@1'),
  engine: z.string(),
  input: z.strictObject({ sha256: z.string() }),
  spread: z.strictObject({ seed: z.number().int(), draws: z.number().int() }),
  tables: z.string(),
  name: z.string(),
  ...parts,
})
