import { createRequire } from 'node:module'
import { expect, test } from 'vitest'
import { SOBOL_DIMENSIONS, scrambledSobol, sobolIntegers } from '../../../shared/core/numerics/sobol.ts'

/** The oracle is plain JavaScript without types. */
const { SobolSequenceGenerator } = createRequire(import.meta.url)('sobol') as {
  SobolSequenceGenerator: new (dimensions: number) => { nextVector(): number[] }
}

/** First five points in twelve dimensions: Joe & Kuo, SIAM J. Sci. Comput. 30 (2008) 2635, Gray-code order, first zero. */
const PUBLISHED = [
  [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
  [0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
  [0.75, 0.25, 0.25, 0.25, 0.75, 0.75, 0.25, 0.75, 0.75, 0.75, 0.75, 0.75],
  [0.25, 0.75, 0.75, 0.75, 0.25, 0.25, 0.75, 0.25, 0.25, 0.25, 0.25, 0.25],
  [0.375, 0.375, 0.625, 0.875, 0.375, 0.125, 0.375, 0.875, 0.875, 0.625, 0.875, 0.375],
]

test('the bare sequence gives the published points', () => {
  for (let dimension = 0; dimension < SOBOL_DIMENSIONS; dimension++) {
    const points = sobolIntegers(PUBLISHED.length, dimension)
    expect(Array.from(points, (x) => x / 2 ** 32)).toEqual(PUBLISHED.map((row) => row[dimension]))
  }
})

test('1,024 points in 12 dimensions equal an independent implementation', () => {
  const oracle = new SobolSequenceGenerator(SOBOL_DIMENSIONS)
  const columns = Array.from({ length: SOBOL_DIMENSIONS }, (_, d) => sobolIntegers(1024, d))
  for (let index = 0; index < 1024; index++) {
    const row = oracle.nextVector()
    expect(row).toEqual(columns.map((column) => (column[index] ?? -1) / 2 ** 32))
  }
})

test('a scramble keeps the net: every dyadic interval of 1,024 points holds exactly one', () => {
  for (const seed of [1, 2, 77, 4294967295]) {
    for (let dimension = 0; dimension < SOBOL_DIMENSIONS; dimension++) {
      const cells = new Set(Array.from(scrambledSobol(1024, dimension, seed), (u) => Math.floor(u * 1024)))
      expect(cells.size, `seed ${seed} dimension ${dimension}`).toBe(1024)
    }
  }
})

test('another seed gives other points, the same seed the same, and none touches 0 or 1', () => {
  const one = scrambledSobol(256, 3, 1)
  expect(Array.from(scrambledSobol(256, 3, 1))).toEqual(Array.from(one))
  expect(Array.from(scrambledSobol(256, 3, 2))).not.toEqual(Array.from(one))
  for (const u of one) expect(u > 0 && u < 1).toBe(true)
})
