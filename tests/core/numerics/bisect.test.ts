import { describe, expect, it } from 'vitest'
import { bisect, narrowToSignChange } from '../../../shared/core/numerics/bisect.ts'

describe('bisection', () => {
  it('finds the root between the ends, rising or falling', () => {
    expect(bisect((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 12)
    expect(bisect((x) => 2 - x * x, 0, 2)).toBeCloseTo(Math.SQRT2, 12)
  })

  it('takes a root at an end', () => {
    expect(bisect((x) => x, 0, 5)).toBe(0)
    expect(bisect((x) => x - 5, 0, 5)).toBe(5)
  })

  it('gives null without a change of sign and for what is no number', () => {
    expect(bisect((x) => x * x + 1, -1, 1)).toBeNull()
    expect(bisect(() => Number.NaN, -1, 1)).toBeNull()
    expect(bisect((x) => (Math.abs(x) < 0.6 ? Number.NaN : x), -1, 1)).toBeNull()
  })

  it('uses signs only, so an infinite value is as good as any', () => {
    const bracket = narrowToSignChange((x) => (x > 0.3 ? Number.NEGATIVE_INFINITY : 1), 0, 1)
    expect(bracket?.low).toBeCloseTo(0.3, 12)
    expect(bracket?.high).toBeGreaterThan(0.3)
  })

  it('asks the function no more often than it was allowed', () => {
    let calls = 0
    const counted = (x: number) => {
      calls++
      return x - 1 / 3
    }
    bisect(counted, 0, 1, { steps: 10 })
    expect(calls).toBe(12)
    calls = 0
    bisect(counted, 0, 1)
    expect(calls).toBeLessThanOrEqual(82)
  })
})
