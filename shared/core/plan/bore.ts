import { done, type Outcome, refused } from '../outcome.ts'
import { annulusVolume } from '../pipe/annulus-volume.ts'
import { oversizeRatio } from '../pipe/oversize-ratio.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { BoreLine } from './bore-line.ts'
import { coverPart } from './cover.ts'
import type { CrossingInput } from './crossing-input.ts'
import { bundleDiameterM, type PipeFacts } from './pipes.ts'
import type { BorePart } from './plan.ts'

export type BoreSize = { readonly diameterM: number; readonly bundleM: number; readonly isExpanded: boolean }

/** An expander is taken a fifth larger than what it makes room for. */
const EXPANDER_OVER_BUNDLE = 1.2

/** Diameter of the finished bore; refused where the pipe does not pass and no second pass was asked for. */
export function boreSize(
  input: CrossingInput,
  pipes: readonly PipeFacts[],
  assumed: Assumed,
  trace: Trace,
): Outcome<BoreSize> {
  const bundleM = bundleDiameterM(pipes, trace)
  const toolM = input.tool.diameterM
  if (bundleM < toolM) return done({ diameterM: toolM, bundleM, isExpanded: false })
  if (input.pull !== 'expander') {
    return refused({
      path: 'pipes',
      code: 'pipe-does-not-pass',
      values: { bundleM, boreM: toolM },
      candidates: [{ value: 'expander', means: 'a second pass with an expander: set "pull" to "expander"' }],
    })
  }
  const diameterM = bundleM * EXPANDER_OVER_BUNDLE
  assumed.note({
    name: 'expander.diameter',
    value: diameterM,
    unit: 'm',
    standing: 'common practice',
    source: 'CommonPractice',
  })
  return done({ diameterM, bundleM, isExpanded: true })
}

/** Radial gaps: fine to 3/4 in on pipe to 1-1/4 in, in question above 1 in. Common practice. */
const FINE_GAP_M = 0.01905
const WIDE_GAP_M = 0.0254
const SMALL_PIPE_M = 0.0425
const TIGHT = 1.15
const TOW_TIGHT = 1.2

function fitOf(ratio: number, radialGapM: number, bundleM: number, isTowed: boolean): BorePart['fit'] {
  if (ratio < TIGHT) return 'tight'
  if (isTowed && ratio < TOW_TIGHT) return 'tow-tight'
  if (radialGapM > WIDE_GAP_M) return 'very-wide'
  const isFine = radialGapM <= FINE_GAP_M && bundleM <= SMALL_PIPE_M
  return ratio <= 1.5 || isFine ? 'normal' : 'wide'
}

export function borePart(line: BoreLine, size: BoreSize, isTowed: boolean, trace: Trace): BorePart {
  const { diameterM, bundleM } = size
  const fit = trace.run(oversizeRatio, { boreM: diameterM, pipeM: bundleM }, 'bore')
  const annulus = trace.run(
    annulusVolume,
    { boreM: diameterM, pipeM: bundleM, lengthM: line.lengthM },
    'bore',
  )
  return {
    lengthM: line.lengthM,
    diameterM,
    bundleDiameterM: bundleM,
    radialGapM: fit.radialGapM,
    ratio: fit.ratio,
    fit: fitOf(fit.ratio, fit.radialGapM, bundleM, isTowed),
    annulusM3PerM: annulus.areaM2,
    ...coverPart(line, diameterM),
  }
}
