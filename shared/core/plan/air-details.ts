import type { AirPoint } from '../air/air-system.ts'
import { compressorFuel } from '../air/compressor-fuel.ts'
import { condensateRate, dryPartKgPerM3 } from '../air/condensate-rate.ts'
import { dryAirDensityKgPerM3, REFERENCE_TEMPERATURE_K, SEA_LEVEL_PA } from '../air/dry-air.ts'
import { exhaustTemperature } from '../air/exhaust-temperature.ts'
import { hoseParting } from '../air/hose-parting.ts'
import { receiverTime } from '../air/receiver-time.ts'
import { humidityRatio } from '../air/saturated-vapour.ts'
import type { Trace } from '../trace.ts'
import { RED_BELOW_PA, stateOf } from './air-flags.ts'
import { allHoses } from './air-input.ts'
import { type TreeFacts, toolsOfInput, toolsOnOneEnd } from './air-line-of-input.ts'
import type { AirBand, AirHazard, AirReceiver, AirSite, AirTool, AirWater } from './air-part.ts'
import { solveAir } from './air-solve.ts'
import type { Assumed } from './assumptions.ts'
import type { CrossingInput } from './crossing-input.ts'

export type AirFacts = {
  readonly input: CrossingInput
  readonly facts: TreeFacts
  readonly point: AirPoint
  readonly assumed: Assumed
  readonly trace: Trace
}

/** The hoses as good and as bad as they may be: the worst gives the low pressure. */
function bandOf({ facts, point }: AirFacts): AirBand {
  const worst = solveAir(facts, 'worst')
  const best = solveAir(facts, 'best')
  const isRead = facts.air.hoses.every((hose) => hose.lossFactor !== null)
  return {
    lowGaugePa: worst.ok ? worst.toolGaugePa : null,
    highGaugePa: best.ok ? best.toolGaugePa : point.toolGaugePa,
    why: isRead ? 'reading' : 'wall-and-couplings',
  }
}

function toolsAt({ facts, point }: AirFacts): readonly AirTool[] {
  const named = toolsOfInput(facts.air)
  const ours = named.findIndex(({ branch }) => branch === null || branch.tool === null)
  const together = toolsOnOneEnd(facts.air)
  return point.tools.map(({ gaugePa, flowM3PerS, isChoked }, index) => ({
    branch: named[index]?.branch?.name ?? '',
    isOurs: index === ours,
    gaugePa,
    flowM3PerS: flowM3PerS / together,
    state: stateOf(gaugePa, isChoked),
  }))
}

function siteOf({ input, facts, point }: AirFacts): AirSite {
  const { siteAbsPa, temperatureK, isEngineLimited } = facts.site
  const gaugePa = point.toolGaugePa
  return {
    barometerPa: siteAbsPa,
    temperatureK,
    relativeHumidity: input.air.relativeHumidity ?? 0,
    densityRatio:
      dryAirDensityKgPerM3(siteAbsPa, temperatureK) /
      dryAirDensityKgPerM3(SEA_LEVEL_PA, REFERENCE_TEMPERATURE_K),
    demandFactor: ((SEA_LEVEL_PA / siteAbsPa) * (gaugePa + siteAbsPa)) / (gaugePa + SEA_LEVEL_PA),
    isEngineLimited,
  }
}

/** Down to where the tool goes red: what a tank holds above that is all that is of use. */
function receiverOf({ facts, point, trace }: AirFacts): AirReceiver | null {
  const volumeM3 = facts.air.receiverM3
  if (volumeM3 === null) return null
  const setGaugePa = facts.air.compressor.gaugePa
  const toGaugePa = point.sags
    ? point.compressorGaugePa
    : Math.min(point.compressorGaugePa, RED_BELOW_PA + point.hoseLossPa)
  const { timeS } = trace.run(
    receiverTime,
    {
      volumeM3,
      inflowM3PerS: point.sags ? point.capacityM3PerS : 0,
      outflowM3PerS: point.demandM3PerS,
      fromGaugePa: setGaugePa,
      toGaugePa,
      atmospherePa: facts.site.siteAbsPa,
    },
    'air',
  )
  return { volumeM3, timeS, bridges: point.sags ? 'deficit' : 'stop' }
}

function fuelOf({ facts, point, assumed, trace }: AirFacts) {
  const loadFraction = Math.min(1, point.flowM3PerS / point.capacityM3PerS)
  const given = {
    freeAirM3PerS: point.capacityM3PerS,
    pressureGaugePa: facts.air.compressor.gaugePa,
    idleShare: assumed.use('air.idleFuel'),
    atmospherePa: facts.site.siteAbsPa,
  }
  const full = compressorFuel.fn({ ...given, load: 1 })
  const now = trace.run(compressorFuel, { ...given, load: loadFraction }, 'air')
  return { nowM3PerS: now.fuelM3PerS, fullM3PerS: full.fuelM3PerS, loadFraction }
}

/** Water in the air drawn in, by where it goes. */
function waterOf({ input, facts, point, assumed, trace }: AirFacts): AirWater | null {
  const { relativeHumidity } = input.air
  if (relativeHumidity === null) return null
  const { siteAbsPa, temperatureK } = facts.site
  const given = {
    freeAirM3PerS: point.flowM3PerS,
    temperatureK,
    relativeHumidity,
    atmospherePa: siteAbsPa,
  }
  const pressureGaugePa = point.compressorGaugePa
  const outletRiseK = assumed.use('air.outletRise')
  const atMachine = trace.run(condensateRate, { ...given, pressureGaugePa, outletRiseK }, 'air')
  const inAll = trace.run(
    condensateRate,
    { ...given, pressureGaugePa: point.toolGaugePa, outletRiseK: 0 },
    'air',
  )
  const drawnIn =
    point.flowM3PerS *
    dryPartKgPerM3(siteAbsPa, temperatureK, relativeHumidity) *
    humidityRatio(siteAbsPa, temperatureK, relativeHumidity)
  return {
    atMachineKgPerS: Math.min(atMachine.rateKgPerS, inAll.rateKgPerS),
    downLineKgPerS: Math.max(0, inAll.rateKgPerS - atMachine.rateKgPerS),
    vapourKgPerS: drawnIn - Math.max(inAll.rateKgPerS, 0),
  }
}

/** 29 CFR 1926.302(b)(7): over 1/2 in inside, a device at the source shuts off when a hose parts. */
const CUT_OFF_ABOVE_M = 0.0127

function hazardOf({ facts, point, trace }: AirFacts): AirHazard {
  const hoses = allHoses(facts.air)
  const widest = hoses.reduce((wide, hose) => (hose.boreM > wide.boreM ? hose : wide))
  const lengthM = hoses.reduce((sum, hose) => sum + hose.lengthM * hose.parallel, 0)
  const mostGaugePa = Math.max(point.unloadedGaugePa, facts.air.compressor.unloadGaugePa ?? 0)
  const { thrustN, energyJ } = trace.run(
    hoseParting,
    { boreM: widest.boreM, lengthM, pressureGaugePa: mostGaugePa, atmospherePa: facts.site.siteAbsPa },
    'air',
  )
  const ratings = hoses.flatMap((hose) => hose.ratedGaugePa ?? [])
  return {
    boreM: widest.boreM,
    lengthM,
    thrustN,
    energyJ,
    needsCutOff: widest.boreM > CUT_OFF_ABOVE_M,
    mostGaugePa,
    ratedGaugePa: ratings.length === 0 ? null : Math.min(...ratings),
  }
}

/** Air has taken the warmth of the place by the time it is at the tool. */
const exhaustOf = ({ facts, point, assumed, trace }: AirFacts): number =>
  trace.run(
    exhaustTemperature,
    {
      supplyK: facts.site.temperatureK,
      pressureGaugePa: point.toolGaugePa,
      workShare: assumed.use('air.workShare'),
      atmospherePa: facts.site.siteAbsPa,
    },
    'air',
  ).exhaustK

/** 60 to 200 mL/h for bodies of 3 to 5 in; below and above in proportion to the air taken would be false precision. */
const OIL_M3_PER_S = { lowM3PerS: 0.06e-3 / 3600, highM3PerS: 0.2e-3 / 3600 } as const

/** All that is worth knowing of the air beside the pressure it settles at. */
export function airDetails(given: AirFacts) {
  const { facts, point } = given
  const receiver = receiverOf(given)
  return {
    sagPa: Math.max(0, facts.air.compressor.gaugePa - point.compressorGaugePa),
    mostAtToolGaugePa: point.mostAtToolGaugePa,
    band: bandOf(given),
    tools: toolsAt(given),
    site: siteOf(given),
    ...(receiver === null ? {} : { receiver }),
    fuel: fuelOf(given),
    water: waterOf(given),
    exhaustK: exhaustOf(given),
    oil: facts.air.lubricator === false ? null : OIL_M3_PER_S,
    hazard: hazardOf(given),
  }
}
