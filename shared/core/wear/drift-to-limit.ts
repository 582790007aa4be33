import { relation } from '../relation.ts'
import { straightLine } from '../statistics/straight-line.ts'
import { studentTQuantile } from '../statistics/student-t.ts'

/**
 * When a reading that drifts reaches a fixed line: plain regression read backwards, with the interval of Fieller's kind.
 * For a few readings without any expectation, such as a valve's length against its nominal one.
 */
export const driftToLimit = relation({
  id: 'drift-to-limit',
  title: 'When a drifting reading reaches a line',
  formula: '(y₀ − a − b x)² = t² s² (k + (x − x̄)²/S_xx), k = 1/n (mean) or 1 + 1/n (one reading)',
  sources: ['GraybillIyer', 'InverseRegression'],
  inputs: {
    times: { list: 'numbers', words: 'when it was read: age, hours, feet' },
    values: { list: 'numbers', words: 'what was read, in the same order' },
    limit: {
      kind: 'ratio',
      words: 'the line, in the unit of the readings',
      range: { hardMin: -1e15, hardMax: 1e15 },
    },
    confidence: {
      kind: 'ratio',
      words: 'share of such intervals that hold the truth',
      range: { min: 0.5, max: 0.999, hardMin: 0.01, hardMax: 0.999999 },
      default: 0.8,
    },
    of: {
      choices: ['mean', 'reading'],
      words: 'what reaches the line: the mean, or one reading',
      default: 'mean',
    },
  },
  outputs: {
    at: { kind: 'ratio', words: 'when the line through the readings reaches it', orNull: true },
    from: { kind: 'ratio', words: 'lower end of the interval', orNull: true },
    to: { kind: 'ratio', words: 'upper end of the interval', orNull: true },
    bound: { choices: ['finite', 'none-yet'], words: 'whether the readings show a drift at all' },
  },
  fn: ({ times, values, limit, confidence, of }) => {
    const line = straightLine(times, values)
    const t = studentTQuantile((1 + confidence) / 2, line.freedom)
    const error = (t * line.residualDeviation) ** 2
    const g = error / (line.slope ** 2 * line.squaresX)
    if (!(g < 1)) {
      const at = line.slope === 0 ? null : (limit - line.intercept) / line.slope
      return { at, from: null, to: null, bound: 'none-yet' }
    }
    const away = (limit - line.intercept) / line.slope - line.meanX
    const k = (of === 'mean' ? 0 : 1) + 1 / line.count
    const middle = away / (1 - g)
    const half = Math.sqrt((error / line.slope ** 2) * ((1 - g) * k + away ** 2 / line.squaresX)) / (1 - g)
    return {
      at: line.meanX + away,
      from: line.meanX + middle - half,
      to: line.meanX + middle + half,
      bound: 'finite',
    }
  },
  checks: ['drift'],
})
