import { relation } from '../relation.ts'
import type { LimitedBy } from './air-system.ts'
import { REFERENCE_TEMPERATURE_K } from './dry-air.ts'
import { HOSE_ROUGHNESS_M } from './hose-outlet.ts'
import { solveOperatingPoint } from './operating-point.ts'

/** One hose without regulator or engine limit knows three limits. */
const limitOfOne = (limitedBy: LimitedBy) =>
  limitedBy === 'engine' || limitedBy === 'regulator' ? 'compressor' : limitedBy

/**
 * One tool on one hose on one rotary compressor: where they settle.
 *
 * ṁ_tool = ṁ_r (p/p_r)^α  meets  p1² − p2² = G² R T [ f L/D + ΣK + 2 ln(p1/p2) ];  ṁ ≤ η_v(z) Q_FAD ρ(z, T)
 * p Pa absolute, ṁ kg/s, α the demand's exponent. The tool's demand is free air of 101.325 kPa and 20 °C at its rated
 * gauge pressure; the flow found is free air at the site's own pressure and temperature.
 * Error: that of the hose and of the tool's rating; the meeting point itself to 1e-12.
 *
 * With no meeting point at a pressure above the air outside there is no tool pressure and no flow, and `limitedBy` says so.
 */
export const airOperatingPoint = relation({
  id: 'air-operating-point',
  title: 'Pressure at the tool: compressor, hose and tool together',
  formula: 'ṁ_r·(p2/p_r)^α = ṁ; p1² − p2² = G²·R·T·[f·L/D + ΣK + 2·ln(p1/p2)]; ṁ ≤ η_v·Q_FAD·ρ',
  sources: ['CraneTp410', 'Colebrook1939', 'Fm5434', 'Iso6358', 'HoseGuide', 'OurJudgement'],
  inputs: {
    freeAirDelivery: {
      kind: 'volumeFlow',
      words: 'rated free air delivery of the compressor',
      range: { min: 0.005, max: 1, hardMin: 1e-4, hardMax: 100 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'pressure the compressor is set to',
      range: { min: 300_000, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    bore: {
      kind: 'diameter',
      words: 'hose bore',
      range: { min: 0.01, max: 0.08, hardMin: 0.002, hardMax: 1 },
    },
    length: {
      kind: 'length',
      words: 'hose length',
      range: { min: 0, max: 300, hardMin: 0, hardMax: 10_000 },
    },
    toolAirDemand: {
      kind: 'volumeFlow',
      words: 'air demand of the tool at its rated pressure',
      range: { min: 0.002, max: 0.5, hardMin: 1e-4, hardMax: 100 },
    },
    toolRatedPressure: {
      kind: 'gaugePressure',
      words: 'rated pressure of the tool',
      range: { min: 300_000, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    altitude: {
      kind: 'altitude',
      words: 'altitude of the site',
      range: { min: -450, max: 3657.6, hardMin: -1000, hardMax: 9000 },
      default: 0,
    },
    temperature: {
      kind: 'temperature',
      words: 'air temperature',
      range: { min: 233.15, max: 328.15, hardMin: 200, hardMax: 400 },
      default: REFERENCE_TEMPERATURE_K,
    },
    couplings: {
      kind: 'count',
      words: 'couplings, K 1.0 each',
      range: { min: 0, max: 40, hardMin: 0, hardMax: 1000 },
      default: 0,
    },
    exponent: {
      kind: 'ratio',
      words: 'exponent of the demand against absolute pressure',
      range: { min: 0.5, max: 2, hardMin: 0, hardMax: 4 },
      default: 1,
    },
    roughness: {
      kind: 'movement',
      words: 'roughness of the inside wall',
      range: { min: 0, max: 1e-4, hardMin: 0, hardMax: 5e-4 },
      default: HOSE_ROUGHNESS_M,
    },
    lubricator: { choices: ['none', 'fitted'], words: 'oiler at the tool end', default: 'none' },
  },
  outputs: {
    tool: { kind: 'gaugePressure', orNull: true, words: 'pressure at the tool' },
    compressor: { kind: 'gaugePressure', words: 'pressure the compressor holds' },
    flow: { kind: 'volumeFlow', orNull: true, words: 'free air drawn, inlet volume at the site' },
    limitedBy: {
      choices: ['tool', 'compressor', 'hose', 'no-operating-point'],
      words: 'what sets the pressure',
    },
  },
  fn: (given) => {
    const { boreM, lengthM, couplings, roughnessM } = given
    const found = solveOperatingPoint({
      freeAirDeliveryM3PerS: given.freeAirDeliveryM3PerS,
      compressorGaugePa: given.pressureGaugePa,
      hoses: [{ boreM, lengthM, couplings, roughnessM }],
      lubricator: given.lubricator === 'fitted',
      toolAirDemandM3PerS: given.toolAirDemandM3PerS,
      toolRatedGaugePa: given.toolRatedPressureGaugePa,
      toolCount: 1,
      altitudeM: given.altitudeM,
      temperatureK: given.temperatureK,
      exponent: given.exponent,
    })
    if (!found.ok) {
      const compressorGaugePa = given.pressureGaugePa
      return { toolGaugePa: null, compressorGaugePa, flowM3PerS: null, limitedBy: 'no-operating-point' }
    }
    const { toolGaugePa, compressorGaugePa, flowM3PerS } = found
    return { toolGaugePa, compressorGaugePa, flowM3PerS, limitedBy: limitOfOne(found.limitedBy) }
  },
  checks: ['air-second-calculation'],
  remarks:
    'The exponent is 1 by the altitude columns of the handbooks; a free piston beating with √p would have 1.5.',
})
