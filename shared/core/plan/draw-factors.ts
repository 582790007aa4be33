import { DRAW_COV, logSigma } from '../ground/set-of-draw.ts'
import { type Dimension, type DrawScores, drawScores } from './draw-scores.ts'

/**
 * What does not depend on the ground, worked out once per seed: factors with median 1 on energy (with efficiency),
 * shaft friction, quake and on what the rate of loading adds.
 */
export type DrawFactors = {
  readonly count: number
  readonly scores: DrawScores
  /** 1, or 0 for the check that a draw loop without spread gives the deterministic run. */
  readonly scale: number
  readonly energy: Float64Array
  readonly shaft: Float64Array
  readonly quake: Float64Array
  readonly rate: Float64Array
  /** ln of the factor on the rigidity index. */
  readonly logRigidity: Float64Array
  /** Lognormal factors with another COV, each made once. */
  lognormal(dimension: Dimension, cov: number): Float64Array
}

function build(scores: DrawScores, scale: number): DrawFactors {
  const { count, normal } = scores
  const made = new Map<string, Float64Array>()
  const lognormal = (dimension: Dimension, cov: number): Float64Array => {
    const key = `${dimension}:${cov}`
    const kept = made.get(key)
    if (kept) return kept
    const sigma = logSigma(cov) * scale
    const factor = normal[dimension].map((z) => Math.exp(sigma * z))
    made.set(key, factor)
    return factor
  }
  const efficiency = lognormal('efficiency', DRAW_COV.efficiency)
  const sigmaRigidity = logSigma(DRAW_COV.rigidityIndex) * scale
  return {
    count,
    scores,
    scale,
    energy: lognormal('energy', DRAW_COV.blowEnergy).map((e, i) => e * (efficiency[i] ?? 1)),
    shaft: lognormal('shaft', DRAW_COV.shaft),
    quake: lognormal('quake', DRAW_COV.quake),
    rate: lognormal('rate', DRAW_COV.rateFactor),
    logRigidity: normal.rigidity.map((z) => sigmaRigidity * z),
    lognormal,
  }
}

let kept: {
  readonly seed: number
  readonly count: number
  readonly scale: number
  readonly factors: DrawFactors
} | null = null

/** The same draws with one dimension held at its middle: what is left of the spread once that is known. */
function withKnown(scores: DrawScores, known: Dimension): DrawScores {
  return {
    count: scores.count,
    normal: { ...scores.normal, [known]: new Float64Array(scores.count) },
    uniform: { ...scores.uniform, [known]: new Float64Array(scores.count).fill(0.5) },
  }
}

/** Factors of a seed; the last ones asked for are kept, for they depend on nothing else. */
export function drawFactors(
  seed: number,
  count: number,
  scale = 1,
  known: Dimension | null = null,
): DrawFactors {
  if (known !== null) return build(withKnown(drawScores(seed, count), known), scale)
  if (kept && kept.seed === seed && kept.count === count && kept.scale === scale) return kept.factors
  const factors = build(drawScores(seed, count), scale)
  kept = { seed, count, scale, factors }
  return factors
}
