import { PreconditionError } from '../outcome.ts'

type Matrix = readonly (readonly number[])[]

const at = (values: readonly number[] | undefined, index: number): number => values?.[index] ?? 0

/** The lower triangle L with L·Lᵀ = A, for a symmetric positive definite A of a few rows. */
export function choleskyFactor(matrix: Matrix): readonly (readonly number[])[] {
  const lower: number[][] = []
  matrix.forEach((row, i) => {
    const made: number[] = []
    for (let j = 0; j <= i; j++) {
      const other = i === j ? made : lower[j]
      let rest = at(row, j)
      for (let k = 0; k < j; k++) rest -= at(made, k) * at(other, k)
      if (i === j && !(rest > 0)) throw new PreconditionError('a covariance that is not positive definite')
      made.push(i === j ? Math.sqrt(rest) : rest / at(other, j))
    }
    lower.push(made)
  })
  return lower
}

/** L·x = b, from the top down. */
export function solveLower(lower: Matrix, right: readonly number[]): readonly number[] {
  const x: number[] = []
  lower.forEach((row, i) => {
    let rest = at(right, i)
    for (let k = 0; k < i; k++) rest -= at(row, k) * at(x, k)
    x.push(rest / at(row, i))
  })
  return x
}

/** Lᵀ·x = b, from the foot up. */
export function solveUpper(lower: Matrix, right: readonly number[]): readonly number[] {
  const x = [...right]
  for (let i = lower.length - 1; i >= 0; i--) {
    let rest = at(right, i)
    for (let k = i + 1; k < lower.length; k++) rest -= at(lower[k], i) * at(x, k)
    x[i] = rest / at(lower[i], i)
  }
  return x
}

export const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, each, index) => sum + each * at(b, index), 0)
