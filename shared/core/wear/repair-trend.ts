import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'

/** Whether repairs of one tool come faster with age: power law, observed to a fixed time. An alarm, not a forecast. */
export const repairTrend = relation({
  id: 'repair-trend',
  title: 'Whether repairs come faster (power law)',
  formula: 'β = r/Σ ln(T/t_i), β̄ = β (r − 1)/r, λ = r/T^β, MTBF(T) = 1/(λβT^(β−1))',
  sources: ['MilHdbk189', 'NistReliability'],
  inputs: {
    repairs: { list: 'numbers', words: 'ages at each repair, all in one unit' },
    observed: {
      kind: 'ratio',
      words: 'age to which it was watched, in the same unit',
      range: { hardMin: 0, hardMax: 1e15 },
    },
  },
  outputs: {
    shape: { kind: 'ratio', words: 'β as found: above 1 repairs come faster' },
    correctedShape: { kind: 'ratio', words: 'β with the bias of few repairs taken out' },
    rate: { kind: 'ratio', words: 'λ of the power law' },
    timeBetween: { kind: 'ratio', words: 'time between repairs at the end, in the same unit' },
  },
  fn: ({ repairs, observed }) => {
    if (repairs.length < 2) throw new PreconditionError('two repairs or more are needed')
    if (repairs.some((age) => age <= 0 || age > observed)) {
      throw new PreconditionError('each repair lies after 0 and not after the age it was watched to')
    }
    const logs = repairs.reduce((sum, age) => sum + Math.log(observed / age), 0)
    if (logs === 0) throw new PreconditionError('all repairs stand at the end; there is no trend to see')
    const shape = repairs.length / logs
    const rate = repairs.length / observed ** shape
    return {
      shape,
      correctedShape: (shape * (repairs.length - 1)) / repairs.length,
      rate,
      timeBetween: 1 / (rate * shape * observed ** (shape - 1)),
    }
  },
  checks: ['lives'],
})
