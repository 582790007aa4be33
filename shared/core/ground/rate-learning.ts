import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'
import { normalQuantile } from '../statistics/normal.ts'
import {
  BORE_SPREAD,
  learnFromBores,
  PRIOR_SPREAD,
  type RateMark,
  sumOfEffects,
  unseenEffects,
} from './rate-effects.ts'

const Z_TENTH = normalQuantile(0.9)

/** By how much your own ground runs faster or slower than the plan says, learned from bores already made. */
export const rateLearning = relation({
  id: 'rate-learning',
  title: 'Rate multiplier from your own bores',
  formula:
    'ln M ~ N(0, τ²); ln(observed/planned) ~ N(ln M, σ²): m = Σy/(n + σ²/τ²), s² = 1/(1/τ² + n/σ²); a stall: matched moments of Φ((c − θ)/σ)',
  sources: ['RateLearningModel'],
  inputs: {
    ratios: { list: 'numbers', words: 'observed over planned rate of each bore that arrived', default: [] },
    stalledBelow: {
      list: 'numbers',
      words: 'for each bore that stalled: the slowest rate that counts as moving, over the planned rate',
      default: [],
    },
    priorSpread: {
      kind: 'ratio',
      words: 'spread of ln(rate) before any bore',
      range: { min: 0.1, max: 1, hardMin: 1e-6, hardMax: 10 },
      default: PRIOR_SPREAD,
    },
    boreSpread: {
      kind: 'ratio',
      words: 'spread of ln(rate) from bore to bore',
      range: { min: 0.1, max: 1, hardMin: 1e-6, hardMax: 10 },
      default: BORE_SPREAD,
    },
  },
  outputs: {
    multiplierP10: { kind: 'ratio', words: 'multiplier, one in ten is lower' },
    multiplierP50: { kind: 'ratio', words: 'multiplier, likely' },
    multiplierP90: { kind: 'ratio', words: 'multiplier, one in ten is higher' },
    spread: { kind: 'ratio', words: 'what is left of the spread of ln(multiplier)' },
  },
  fn: ({ ratios, stalledBelow, priorSpread, boreSpread }) => {
    if ([...ratios, ...stalledBelow].some((ratio) => ratio <= 0)) {
      throw new PreconditionError('a ratio of rates is above zero')
    }
    const mark = (ratio: number, stalled: boolean): RateMark => ({
      effects: ['ground'],
      logRatio: Math.log(ratio),
      stalled,
    })
    const known = learnFromBores(
      unseenEffects({ ground: priorSpread }),
      [...ratios.map((ratio) => mark(ratio, false)), ...stalledBelow.map((ratio) => mark(ratio, true))],
      boreSpread,
    )
    const { mean, variance } = sumOfEffects(known, ['ground'])
    const spread = Math.sqrt(variance)
    return {
      multiplierP10: Math.exp(mean - Z_TENTH * spread),
      multiplierP50: Math.exp(mean),
      multiplierP90: Math.exp(mean + Z_TENTH * spread),
      spread,
    }
  },
  checks: ['rate-learning'],
  remarks:
    'Scope it: one ground family, one area, one tool. Bores that stalled belong in, or it learns from luck alone.',
})
