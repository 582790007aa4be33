import type { SourceKey } from '../../sources.ts'
import { RED_BELOW_PA } from './air-flags.ts'
import type { AirPart } from './air-part.ts'
import type { CrossingInput } from './crossing-input.ts'
import type { BorePart, Caution, GroundPart, PitPart, PricePart, PullPart, ShotPart } from './plan.ts'
import type { Stretch } from './stretches.ts'

export type CautionFacts = {
  readonly input: CrossingInput
  readonly bore: BorePart
  readonly air: AirPart
  readonly ground: GroundPart
  readonly pits: readonly PitPart[]
  readonly pull: PullPart
  readonly shots: readonly ShotPart[]
  readonly stretches: readonly Stretch[]
  readonly price: PricePart | null
  readonly stopShortM: number | null
}

type Values = Caution['values']
const caution = (
  severity: Caution['severity'],
  id: string,
  source: SourceKey,
  values: Values = {},
): Caution => ({
  id,
  severity,
  source,
  values,
})

/** 45 °F: damp air ices at the exhaust from about here down. */
const ICING_FROM_K = 280.37
/** 110 psi: a big machine on a small tool rides up to its unloading pressure. */
const HIGH_GAUGE_PA = 758_423

/** Up to so many kilovolts, in feet: table A of the rule. */
const AWAY_FT = [
  [50, 10],
  [200, 15],
  [350, 20],
  [500, 25],
  [750, 35],
] as const
const MOST_AWAY_FT = 45
const FOOT_M = 0.3048
/** A voltage nobody knows is taken for a large one of common lines. */
const UNKNOWN_KV = 350

function awayFromM(kilovolts: number | null): number {
  const kv = kilovolts ?? UNKNOWN_KV
  return (AWAY_FT.find(([upToKv]) => kv <= upToKv)?.[1] ?? MOST_AWAY_FT) * FOOT_M
}

function aboutPeople({ input, pits, stopShortM }: CautionFacts): Caution[] {
  const found = [
    caution('danger', 'plan-does-not-permit', 'OneCallRules'),
    caution('danger', 'unlisted-lines', 'CommonPractice'),
    caution('danger', 'keep-exit-pit-empty', 'CommonPractice'),
    caution('danger', 'air-off-and-bled', 'MineAirRule'),
    caution('warning', 'hear-and-see', 'Cfr1926Noise'),
  ]
  const deepestM = Math.max(0, ...pits.map((pit) => pit.floorDepthM))
  if (pits.some((pit) => pit.needsProtection))
    found.push(caution('danger', 'pit-can-bury', 'Cfr1926P', { floorM: deepestM }))
  if ((input.utilities ?? []).some((u) => ['gas', 'propane'].includes(u.kind))) {
    found.push(caution('danger', 'gas-struck', 'OneCallRules'))
  }
  if ((input.utilities ?? []).some((u) => u.kind === 'electric' || u.kind === 'lighting')) {
    found.push(caution('danger', 'power-struck', 'CommonPractice'))
  }
  const overheadM = Math.max(0, ...input.overhead.map(({ kilovolts }) => awayFromM(kilovolts)))
  if (overheadM > 0) found.push(caution('danger', 'line-overhead', 'OshaOverhead', { overheadM }))
  if (stopShortM !== null)
    found.push(caution('danger', 'stop-short-of-wall', 'CommonPractice', { stopShortM }))
  if ([input.ends.launch, input.ends.reception].some((end) => end.kind === 'inside')) {
    found.push(caution('danger', 'work-inside', 'CommonPractice'))
  }
  return found
}

/** 1500 m: from here an engine without a turbo lacks more than a tenth. Our judgement. */
const ENGINE_ASKED_FROM_M = 1500

/** Several tools, thin air, water, and hoses that can part. */
function aboutLine({ input, air }: Pick<CautionFacts, 'input' | 'air'>): Caution[] {
  const found: Caution[] = []
  const { tools = [], hazard, water, band } = air
  const starved = tools.filter(({ state }) => state === 'starved' || state === 'choked')
  if (tools.length > 1) {
    for (const { branch, gaugePa } of starved) {
      found.push(caution('warning', 'tool-starves', 'CommonPractice', { branch, toolGaugePa: gaugePa }))
    }
  }
  const altitudeM = input.air.altitudeM ?? 0
  if (air.limitedBy === 'engine') {
    const values = { demandM3PerS: air.demandM3PerS, capacityM3PerS: air.capacityM3PerS, altitudeM }
    found.push(caution('warning', 'engine-too-weak', 'EngineDerateRule', values))
  }
  if (altitudeM > ENGINE_ASKED_FROM_M && input.air.compressor.engine === null) {
    found.push(caution('advice', 'engine-not-said', 'EngineDerateRule', { altitudeM }))
  }
  if (band !== undefined && air.flag !== 'low' && (band.lowGaugePa ?? 0) < RED_BELOW_PA) {
    found.push(
      caution('advice', 'air-uncertain', 'OurJudgement', {
        toolGaugePa: band.lowGaugePa ?? 0,
        highGaugePa: band.highGaugePa,
      }),
    )
  }
  const waterKgPerS = water ? water.atMachineKgPerS + water.downLineKgPerS : 0
  if (waterKgPerS > 0 && input.air.separator === null) {
    found.push(caution('advice', 'water-in-line', 'AshraeFundamentals', { waterKgPerS }))
  }
  if (hazard?.needsCutOff) {
    const { boreM, thrustN, energyJ } = hazard
    found.push(caution('warning', 'hose-can-whip', 'Cfr1926Air', { boreM, thrustN, energyJ }))
  }
  return found
}

function aboutAir({ input, air }: CautionFacts): Caution[] {
  const found: Caution[] = []
  const mostGaugePa = air.mostAtToolGaugePa ?? air.unloadedGaugePa
  if (mostGaugePa > Math.min(HIGH_GAUGE_PA, input.tool.ratedGaugePa ?? HIGH_GAUGE_PA)) {
    found.push(
      caution('warning', 'regulate-down', 'CommonPractice', {
        unloadedGaugePa: mostGaugePa,
        toolGaugePa: air.toolGaugePa,
      }),
    )
  }
  const temperatureK = input.air.temperatureK
  // Air compressed sevenfold is damp unless it was very dry before: nothing said counts as damp.
  const isDry = air.water !== undefined && air.water !== null && air.water.downLineKgPerS <= 0
  if (temperatureK !== null && temperatureK <= ICING_FROM_K && !isDry) {
    found.push(caution('warning', 'icing', 'CommonPractice', { temperatureK }))
  }
  found.push(...aboutLine({ input, air }))
  if (input.air.lubricator === false) found.push(caution('warning', 'no-oiler', 'CommonPractice'))
  if (air.limitedBy === 'compressor')
    found.push(
      caution('warning', 'compressor-too-small', 'OurJudgement', {
        demandM3PerS: air.demandM3PerS,
        capacityM3PerS: air.capacityM3PerS,
      }),
    )
  return found
}

function aboutGround({ ground, stretches, bore, shots }: CautionFacts): Caution[] {
  const found: Caution[] = []
  if (ground.breakout)
    found.push(
      caution('danger', 'breakout', 'OurJudgement', { atM: ground.atM, coverRatio: bore.coverRatio }),
    )
  if (ground.heaveM.p90 > 0.006)
    found.push(caution('warning', 'heave', 'OurJudgement', { heaveM: ground.heaveM.p90 }))
  if (stretches.some((s) => s.state.holeCloses))
    found.push(caution('warning', 'hole-may-close', 'CommonPractice'))
  if (stretches.some((s) => s.state.poorGrip)) found.push(caution('warning', 'poor-grip', 'CommonPractice'))
  if (stretches.some((s) => s.waterTableM !== null && s.waterTableM < s.axisDepthM)) {
    found.push(caution('warning', 'below-water', 'CommonPractice'))
  }
  if (shots.some((shot) => shot.stretches.length > 1))
    found.push(caution('warning', 'layers-deflect', 'CommonPractice'))
  if (shots.some((shot) => shot.run.refusalProbability > 0.1)) {
    const worst = Math.max(...shots.map((shot) => shot.run.refusalProbability))
    found.push(caution('warning', 'may-stall', 'OurJudgement', { probability: worst }))
  }
  found.push(caution('advice', 'rate-not-validated', 'OurJudgement'))
  return found
}

function aboutPipe({ input, bore, pull, price }: CautionFacts): Caution[] {
  const found: Caution[] = []
  if (bore.fit === 'wide' || bore.fit === 'very-wide') {
    found.push(
      caution('advice', 'void-around-pipe', 'CommonPractice', {
        annulusM3PerM: bore.annulusM3PerM,
        radialGapM: bore.radialGapM,
      }),
    )
  }
  if (input.grade !== null)
    found.push(caution('warning', 'grade-other-ways', 'CommonPractice', { grade: input.grade }))
  if (pull.method === 'tow') found.push(caution('warning', 'towed-no-reverse', 'CommonPractice'))
  if (pull.method === 'reverse') found.push(caution('warning', 'prove-reverse-first', 'CommonPractice'))
  if (input.pipes.some((pipe) => pipe.system === 'pe-gas'))
    found.push(caution('warning', 'weak-link', 'Cfr192'))
  if (price?.belowMinimumCallOut) {
    found.push(
      caution('advice', 'below-call-out', 'CommonPractice', {
        minorUnits: price.minimumCallOutMinorUnits,
        currency: price.currency,
      }),
    )
  }
  return found
}

/** What can hurt somebody or spoil the bore, worst first; each with where it comes from. */
export function cautionsPart(facts: CautionFacts): Caution[] {
  const all = [...aboutPeople(facts), ...aboutGround(facts), ...aboutAir(facts), ...aboutPipe(facts)]
  const order: readonly Caution['severity'][] = ['danger', 'warning', 'advice']
  return [...all].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity))
}
