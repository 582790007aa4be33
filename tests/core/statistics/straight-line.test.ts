import { describe, expect, it } from 'vitest'
import { straightLine } from '../../../shared/core/statistics/straight-line.ts'

/** NIST StRD, linear regression, data set Norris (lower difficulty). */
const NORRIS_X = [
  0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2, 0.4, 0.6, 775.5, 666.9, 338, 447.5,
  11.6, 556, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999, 779, 11.1, 118.3, 229.2, 669.1,
  448.9, 0.5,
]
const NORRIS_Y = [
  0.1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9,
  10.8, 557.7, 228.3, 998, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4,
  449.2, 0.2,
]

describe('a straight line by least squares', () => {
  it('meets the certified values of NIST StRD Norris', () => {
    const line = straightLine(NORRIS_X, NORRIS_Y)
    const certified = {
      intercept: -0.262323073774029,
      slope: 1.00211681802045,
      interceptError: 0.232818234301152,
      slopeError: 0.429796848199937e-3,
      residualDeviation: 0.884796396144373,
      residualSquares: 26.6173985294224,
    }
    for (const [name, value] of Object.entries(certified)) {
      expect(Math.abs(line[name as keyof typeof certified] / value - 1), name).toBeLessThan(1e-11)
    }
  })

  it('says what is missing', () => {
    expect(() => straightLine([1, 2], [1, 2])).toThrow('three readings')
    expect(() => straightLine([1, 2, 3], [1, 2])).toThrow('3 times, but 2 values')
    expect(() => straightLine([2, 2, 2], [1, 2, 3])).toThrow('one time')
  })
})
