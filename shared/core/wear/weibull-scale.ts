import { relation } from '../relation.ts'
import { scaleForShape } from './weibull-likelihood.ts'

/** Scale of a law of lives whose shape is given: for the few failures a shop with three tools will ever see. */
export const weibullScale = relation({
  id: 'weibull-scale',
  title: 'Scale of a law of lives whose shape is given',
  formula: 'η = (Σt^β/r)^(1/β)',
  sources: ['WeibullLikelihood'],
  inputs: {
    failures: { list: 'numbers', words: 'ages at failure, all in one unit' },
    suspensions: { list: 'numbers', words: 'ages of what still runs or was taken out whole', default: [] },
    shape: {
      kind: 'ratio',
      words: 'shape β, given',
      range: { min: 0.5, max: 8, hardMin: 0.01, hardMax: 100 },
    },
  },
  outputs: { scale: { kind: 'ratio', words: 'scale η, in the unit of the ages' } },
  fn: ({ failures, suspensions, shape }) => ({ scale: scaleForShape(failures, suspensions, shape) }),
  checks: ['lives'],
})
