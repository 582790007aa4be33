import { narrowToSignChange } from '../numerics/bisect.ts'
import { PreconditionError } from '../outcome.ts'

export type Weibull = { readonly shape: number; readonly scale: number }

/** Shapes looked at: from nearly all failing at once to all failing at one age. */
const LEAST_SHAPE = 1e-3
const LARGEST_SHAPE = 1e3

/** Refuses what no life can be. */
export function requireLives(failures: readonly number[], suspensions: readonly number[]): void {
  if (failures.length === 0) throw new PreconditionError('at least one failure is needed')
  for (const each of [...failures, ...suspensions]) {
    if (!(Number.isFinite(each) && each > 0)) throw new PreconditionError(`a life is above zero, got ${each}`)
  }
}

/** Σ (t/t_max)^β: taken about the longest life, so that no power overflows. */
const powerSum = (lives: readonly number[], longest: number, shape: number): number =>
  lives.reduce((sum, each) => sum + (each / longest) ** shape, 0)

/** Scale of greatest likelihood for a shape that is given: η = (Σ t^β / r)^(1/β). */
export function scaleForShape(
  failures: readonly number[],
  suspensions: readonly number[],
  shape: number,
): number {
  requireLives(failures, suspensions)
  const lives = [...failures, ...suspensions]
  const longest = Math.max(...lives)
  return longest * (powerSum(lives, longest, shape) / failures.length) ** (1 / shape)
}

/**
 * Shape and scale of greatest likelihood with lives cut short (suspensions): the profile equation of the shape has one
 * root, found by halving. Needs two failures at different ages.
 */
export function fitWeibull(failures: readonly number[], suspensions: readonly number[]): Weibull {
  requireLives(failures, suspensions)
  const lives = [...failures, ...suspensions]
  const longest = Math.max(...lives)
  const logs = lives.map((each) => Math.log(each / longest))
  const meanLog = failures.reduce((sum, each) => sum + Math.log(each / longest), 0) / failures.length
  const slope = (shape: number): number => {
    let powers = 0
    let weighted = 0
    for (const log of logs) {
      const power = Math.exp(shape * log)
      powers += power
      weighted += power * log
    }
    return weighted / powers - 1 / shape - meanLog
  }
  const found = narrowToSignChange(slope, LEAST_SHAPE, LARGEST_SHAPE, { steps: 200, relative: 1e-15 })
  if (found === null) throw new PreconditionError('two failures at different ages are needed to find a shape')
  const shape = (found.low + found.high) / 2
  return { shape, scale: scaleForShape(failures, suspensions, shape) }
}
