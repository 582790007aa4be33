import { PreconditionError, requireFinite } from '../outcome.ts'

export type StraightLine = {
  readonly intercept: number
  readonly slope: number
  /** Standard errors of the two. */
  readonly interceptError: number
  readonly slopeError: number
  /** Sum of the squared distances from the line, and the standard deviation about it. */
  readonly residualSquares: number
  readonly residualDeviation: number
  readonly freedom: number
  /** What an interval about the line needs: how many points, their middle, and the spread of x. */
  readonly count: number
  readonly meanX: number
  readonly squaresX: number
}

const mean = (values: readonly number[]): number => {
  const first = values.reduce((sum, each) => sum + each, 0) / values.length
  // A second pass takes back what the first lost to rounding.
  return first + values.reduce((sum, each) => sum + (each - first), 0) / values.length
}

/** Least squares of y on x with an intercept, centred in two passes. Three points or more, not all at one x. */
export function straightLine(x: readonly number[], y: readonly number[]): StraightLine {
  const count = x.length
  if (count !== y.length) throw new PreconditionError(`${count} times, but ${y.length} values`)
  if (count < 3) throw new PreconditionError('a line with its spread needs three readings or more')
  for (const each of [...x, ...y]) requireFinite('a reading', each)
  const meanX = mean(x)
  const meanY = mean(y)
  let squaresX = 0
  let products = 0
  x.forEach((each, index) => {
    squaresX += (each - meanX) ** 2
    products += (each - meanX) * ((y[index] ?? 0) - meanY)
  })
  if (squaresX === 0) throw new PreconditionError('all readings stand at one time; a line needs two')
  const slope = products / squaresX
  const residualSquares = x.reduce(
    (sum, each, index) => sum + ((y[index] ?? 0) - meanY - slope * (each - meanX)) ** 2,
    0,
  )
  const freedom = count - 2
  const residualDeviation = Math.sqrt(residualSquares / freedom)
  return {
    slope,
    intercept: meanY - slope * meanX,
    slopeError: residualDeviation / Math.sqrt(squaresX),
    interceptError: residualDeviation * Math.sqrt(1 / count + meanX ** 2 / squaresX),
    residualSquares,
    residualDeviation,
    freedom,
    count,
    meanX,
    squaresX,
  }
}
