import { relation } from '../relation.ts'
import { fitWeibull } from './weibull-likelihood.ts'

/** Law of lives with some of them cut short, by greatest likelihood. Below five failures the shape is better given. */
export const weibullFit = relation({
  id: 'weibull-fit',
  title: 'Law of lives from failures and what still runs (Weibull)',
  formula: 'Σt^β ln t/Σt^β − 1/β − mean(ln t_failed) = 0; η = (Σt^β/r)^(1/β)',
  sources: ['WeibullLikelihood', 'NistReliability', 'LiebleinZelen'],
  inputs: {
    failures: { list: 'numbers', words: 'ages at failure, all in one unit' },
    suspensions: { list: 'numbers', words: 'ages of what still runs or was taken out whole', default: [] },
  },
  outputs: {
    shape: { kind: 'ratio', words: 'shape β: below 1 early faults, 1 chance, above 1 wear' },
    scale: { kind: 'ratio', words: 'scale η, in the unit of the ages: 63 % have failed by then' },
  },
  fn: ({ failures, suspensions }) => fitWeibull(failures, suspensions),
  checks: ['lives'],
  remarks:
    'With fewer than about five failures the shape is not to be trusted: give one and use weibull-scale.',
})
