import { relation } from '../relation.ts'
import { SEA_LEVEL_PA } from './dry-air.ts'

/**
 * Time a receiver (air tank) takes from one pressure to another while constant flows run in and out.
 *
 * t = V (p1 − p2) / [ p_a (Q_out − Q_in) ]
 * V m³, p Pa, Q m³/s of free air at p_a and the air's temperature; isothermal, so slow changes only (a blow-down in
 * seconds is up to 1.4 times as quick).
 * Error: exact for constant flows.
 *
 * Flows that move the pressure the other way, or not at all, never get there. Then `reached` says never and the time,
 * which does not exist, is null.
 */
export const receiverTime = relation({
  id: 'receiver-time',
  title: 'Time an air receiver bridges',
  formula: 't = V·(p1 − p2)/(p_a·(Q_out − Q_in))',
  sources: ['OrnlReceiverTests', 'EspositoFluidPower'],
  inputs: {
    volume: {
      kind: 'volume',
      words: 'volume of the receiver',
      range: { min: 0, max: 50, hardMin: 0, hardMax: 10_000 },
    },
    inflow: {
      kind: 'volumeFlow',
      words: 'free air coming in',
      range: { min: 0, max: 5, hardMin: 0, hardMax: 100 },
    },
    outflow: {
      kind: 'volumeFlow',
      words: 'free air going out',
      range: { min: 0, max: 5, hardMin: 0, hardMax: 100 },
    },
    from: {
      kind: 'gaugePressure',
      words: 'pressure at the start',
      range: { min: 0, max: 1.6e6, hardMin: 0, hardMax: 1e7 },
    },
    to: {
      kind: 'gaugePressure',
      words: 'pressure at the end',
      range: { min: 0, max: 1.6e6, hardMin: 0, hardMax: 1e7 },
    },
    atmosphere: {
      kind: 'absolutePressure',
      words: 'barometer the free air is measured at',
      range: { min: 50_000, max: 107_000, hardMin: 30_000, hardMax: 115_000 },
      default: SEA_LEVEL_PA,
    },
  },
  outputs: {
    time: { kind: 'duration', orNull: true, words: 'time to get there; none where it never does' },
    reached: { choices: ['reached', 'never'], words: 'whether the flows lead there' },
  },
  fn: ({ volumeM3, inflowM3PerS, outflowM3PerS, fromGaugePa, toGaugePa, atmospherePa }) => {
    const freeAirM3 = (volumeM3 * (fromGaugePa - toGaugePa)) / atmospherePa
    const netOutflowM3PerS = outflowM3PerS - inflowM3PerS
    if (freeAirM3 === 0) return { timeS: 0, reached: 'reached' }
    if (freeAirM3 * netOutflowM3PerS <= 0) return { timeS: null, reached: 'never' }
    return { timeS: freeAirM3 / netOutflowM3PerS, reached: 'reached' }
  },
  checks: ['ornl-receiver-tests'],
  remarks:
    'The tank of a portable compressor is tens of litres: it bridges seconds and does not make up for a machine too small.',
})
