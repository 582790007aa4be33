import { HIGH_ABOVE_PA } from './air-flags.ts'
import { type AirInput, branchesToTool, type HoseInput, hosesToTool } from './air-input.ts'
import type { CrossingInput } from './crossing-input.ts'

/** A change somebody could make on site, and the air as it would then be. */
export type AirChange = {
  readonly code: AirChangeCode
  readonly values: Readonly<Record<string, number | string>>
  readonly air: AirInput
}

export const AIR_CHANGES = [
  'next-hose',
  'shorter-run',
  'parallel-line',
  'full-bore-couplings',
  'other-compressor',
  'one-tool',
  'fit-regulator',
] as const
export type AirChangeCode = (typeof AIR_CHANGES)[number]

/** A compressor that could be sent instead: from the shop, or of a usual size. */
export type OtherCompressor = {
  readonly name: string
  readonly freeAirDeliveryM3PerS: number
  readonly gaugePa: number
}

const INCH_M = 0.0254
const CFM_M3_PER_S = 0.3048 ** 3 / 60
/** Air hose as it is sold. */
const TRADE_BORES_M = [0.5, 0.75, 1, 1.25, 1.5, 2].map((inches) => inches * INCH_M)
/** Portables as they are hired out. */
const USUAL_CFM = [90, 125, 185, 250, 375]
/** Hose the tool pulls in behind it, and some to stand on. */
const SLACK_M = 3
/** A piece shorter than this is not worth a second line. */
const LEAST_PARALLEL_M = 3
/** 100 psi, where most tools are at home. */
const USUAL_GAUGE_PA = 689_476

const nextBoreM = (boreM: number): number | null => TRADE_BORES_M.find((each) => each > boreM * 1.02) ?? null

/** The same air with every hose on the way to our tool put through a change. */
function withHoses(air: AirInput, change: (hose: HoseInput) => readonly HoseInput[]): AirInput {
  const ours = new Set(branchesToTool(air))
  return {
    ...air,
    hoses: air.hoses.flatMap(change),
    branches: air.branches.map((branch) =>
      ours.has(branch) ? { ...branch, hoses: branch.hoses.flatMap(change) } : branch,
    ),
  }
}

/** The narrowest hoses on the way, one trade size up; a reading of the old ones says nothing of the new. */
function nextHose(air: AirInput): AirChange | null {
  const narrowestM = Math.min(...hosesToTool(air).map((hose) => hose.boreM))
  const boreM = nextBoreM(narrowestM)
  if (boreM === null) return null
  const change = (hose: HoseInput): readonly HoseInput[] =>
    hose.boreM > narrowestM
      ? [hose]
      : [{ ...hose, boreM, couplingBoreM: null, lossFactor: null, measuredOn: null }]
  return { code: 'next-hose', values: { boreM, fromM: narrowestM }, air: withHoses(air, change) }
}

/** Only what the bore itself needs: the machine stands at the pit. */
function shorterRun(air: AirInput, boreLengthM: number): AirChange | null {
  if (air.branches.length > 0) return null
  const wholeM = air.hoses.reduce((sum, hose) => sum + hose.lengthM, 0)
  const neededM = boreLengthM + SLACK_M
  if (wholeM - neededM < LEAST_PARALLEL_M) return null
  let leftM = neededM
  // What hangs on the tool stays; hoses go at the machine's end.
  const kept = [...air.hoses].reverse().flatMap((hose) => {
    if (leftM <= 0) return []
    const lengthM = Math.min(hose.lengthM, leftM)
    leftM -= lengthM
    return [{ ...hose, lengthM }]
  })
  return {
    code: 'shorter-run',
    values: { lengthM: neededM, fromM: wholeM },
    air: { ...air, hoses: [...kept].reverse() },
  }
}

/** A second line beside the first, as far as the pit: in the bore there is room for one. */
function parallelLine(air: AirInput, boreLengthM: number): AirChange | null {
  let inBoreM = air.branches.length > 0 ? 0 : boreLengthM + SLACK_M
  let besideM = 0
  const hoses = [...air.hoses]
    .reverse()
    .flatMap((hose): HoseInput[] => {
      const singleM = Math.min(hose.lengthM, inBoreM)
      inBoreM -= singleM
      const restM = hose.lengthM - singleM
      if (restM < LEAST_PARALLEL_M || hose.parallel > 1) return [hose]
      besideM += restM
      const beside = { ...hose, lengthM: restM, parallel: 2 }
      return singleM === 0 ? [beside] : [{ ...hose, lengthM: singleM, couplings: 0 }, beside]
    })
    .reverse()
  if (besideM === 0) return null
  return { code: 'parallel-line', values: { lengthM: besideM }, air: { ...air, hoses } }
}

function fullBoreCouplings(air: AirInput): AirChange | null {
  if (!hosesToTool(air).some((hose) => hose.couplingBoreM !== null && hose.couplingBoreM < hose.boreM))
    return null
  const change = (hose: HoseInput): readonly HoseInput[] => [{ ...hose, couplingBoreM: hose.boreM }]
  return { code: 'full-bore-couplings', values: {}, air: withHoses(air, change) }
}

function otherCompressors(air: AirInput, fleet: readonly OtherCompressor[]): readonly AirChange[] {
  const { freeAirDeliveryM3PerS, gaugePa } = air.compressor
  const nextCfm = USUAL_CFM.find((cfm) => cfm * CFM_M3_PER_S > freeAirDeliveryM3PerS * 1.05)
  const usual =
    fleet.length > 0 || nextCfm === undefined
      ? []
      : [{ name: '', freeAirDeliveryM3PerS: nextCfm * CFM_M3_PER_S, gaugePa }]
  return [...fleet, ...usual]
    .filter((other) => other.freeAirDeliveryM3PerS !== freeAirDeliveryM3PerS || other.gaugePa !== gaugePa)
    .map((other) => ({
      code: 'other-compressor',
      values: {
        name: other.name,
        freeAirM3PerS: other.freeAirDeliveryM3PerS,
        compressorGaugePa: other.gaugePa,
      },
      air: {
        ...air,
        compressor: {
          ...air.compressor,
          freeAirDeliveryM3PerS: other.freeAirDeliveryM3PerS,
          gaugePa: other.gaugePa,
          unloadGaugePa: null,
          reference: 'inlet',
        },
      },
    }))
}

/** The others wait: their branches stay where they are, shut. */
function oneTool(air: AirInput): AirChange | null {
  if (air.branches.length === 0) {
    return air.tools < 2
      ? null
      : { code: 'one-tool', values: { tools: air.tools }, air: { ...air, tools: 1 } }
  }
  const ours = branchesToTool(air)
  if (ours.length === air.branches.length) return null
  const hoses = [...air.hoses, ...ours.flatMap((branch) => branch.hoses)]
  const regulators = ours.flatMap((branch) => branch.regulatorGaugePa ?? [])
  const regulatorGaugePa =
    regulators.length === 0 ? air.regulatorGaugePa : Math.min(air.regulatorGaugePa ?? Infinity, ...regulators)
  const ends = air.branches.filter(({ name }) => !air.branches.some((each) => each.from === name))
  return {
    code: 'one-tool',
    values: { tools: ends.length },
    air: { ...air, hoses, regulatorGaugePa, branches: [] },
  }
}

/** Too much: a big machine on a small tool. */
function fitRegulator({ air, tool }: CrossingInput, mostAtToolGaugePa: number): AirChange | null {
  const limitPa = Math.min(HIGH_ABOVE_PA, tool.ratedGaugePa ?? HIGH_ABOVE_PA)
  if (mostAtToolGaugePa <= limitPa) return null
  const gaugePa = Math.min(USUAL_GAUGE_PA, tool.ratedGaugePa ?? USUAL_GAUGE_PA)
  return {
    code: 'fit-regulator',
    values: { compressorGaugePa: gaugePa },
    air: { ...air, regulatorGaugePa: gaugePa },
  }
}

/** Every change that can be made here. */
export function airChanges(
  input: CrossingInput,
  boreLengthM: number,
  mostAtToolGaugePa: number,
  fleet: readonly OtherCompressor[],
): readonly AirChange[] {
  const { air } = input
  const found = [
    nextHose(air),
    shorterRun(air, boreLengthM),
    parallelLine(air, boreLengthM),
    fullBoreCouplings(air),
    oneTool(air),
    fitRegulator(input, mostAtToolGaugePa),
  ].flatMap((each) => (each === null ? [] : [each]))
  return [...found, ...otherCompressors(air, fleet)]
}
