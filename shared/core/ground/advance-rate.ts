import { relation } from '../relation.ts'
import { planningRateMPerS, stalls } from './set-of-draw.ts'

/**
 * Rate of advance while hammering, m/s: set times blows per second, bent towards 1.5 m/min for planning,
 * v = 1.5 (1 − e^(−r0/1.5)) m/min. The cap is for planning; a live log must not be capped. Stall: set < 0.15 mm or v < 0.05 m/min.
 */
export const advanceRate = relation({
  id: 'advance-rate',
  title: 'Rate of advance while hammering',
  formula: 'r0 = s f; v = 1.5 (1 − e^(−r0/1.5)) m/min; stalls if s < 0.15 mm or v < 0.05 m/min',
  sources: ['PenetrationModel'],
  inputs: {
    set: { kind: 'movement', words: 'set per blow', range: { min: 0, max: 0.01, hardMin: 0 } },
    blowRate: { kind: 'frequency', words: 'blows per second', range: { min: 3, max: 12, hardMin: 0 } },
  },
  outputs: {
    uncapped: { kind: 'speed', words: 'set times blow rate' },
    advance: { kind: 'speed', words: 'rate to plan with' },
    verdict: { choices: ['advances', 'stalls'], words: 'does it go on' },
  },
  fn: ({ setM, blowRateHz }) => {
    const advanceMPerS = planningRateMPerS(setM, blowRateHz)
    return {
      uncappedMPerS: setM * blowRateHz,
      advanceMPerS,
      verdict: stalls(setM, advanceMPerS) ? 'stalls' : 'advances',
    }
  },
  checks: ['ground-penetration'],
})
