import { scrambledSobol } from '../numerics/sobol.ts'
import { normalQuantile } from '../statistics/normal.ts'

/**
 * The named dimensions of a draw, in order of influence. Append only: a new one goes at the end, so that a changed
 * input, or a new one, never moves the draws of the others.
 */
export const DIMENSIONS = [
  'model',
  'strength',
  'rate',
  'shaft',
  'energy',
  'efficiency',
  'rigidity',
  'quake',
  'frictionAngle',
  'elapsed',
  'siteTime',
  'obstruction',
] as const
export type Dimension = (typeof DIMENSIONS)[number]

export type DrawScores = {
  readonly count: number
  /** Standard normal scores by dimension. */
  readonly normal: Readonly<Record<Dimension, Float64Array>>
  /** The same points as uniforms, for what is not bell-shaped. */
  readonly uniform: Readonly<Record<Dimension, Float64Array>>
}

function build(seed: number, count: number): DrawScores {
  const uniform = {} as Record<Dimension, Float64Array>
  const normal = {} as Record<Dimension, Float64Array>
  DIMENSIONS.forEach((name, index) => {
    const points = scrambledSobol(count, index, seed)
    uniform[name] = points
    normal[name] = points.map(normalQuantile)
  })
  return { count, normal, uniform }
}

let kept: { readonly seed: number; readonly scores: DrawScores } | null = null

/** The one matrix of scores of a seed. The last one asked for is kept: it depends on nothing but seed and count. */
export function drawScores(seed: number, count: number): DrawScores {
  if (kept && kept.seed === seed && kept.scores.count === count) return kept.scores
  const scores = build(seed, count)
  kept = { seed, scores }
  return scores
}
