import { hosesToTool } from './air-input.ts'
import type { BoreSize } from './bore.ts'
import type { BoreLine } from './bore-line.ts'
import type { CrossingInput } from './crossing-input.ts'
import type { PipeFacts } from './pipes.ts'
import type { PullFacts } from './pull.ts'
import type { Stretch } from './stretches.ts'

type Known = {
  readonly input: CrossingInput
  readonly line: BoreLine
  readonly size: BoreSize
  readonly pipes: readonly PipeFacts[]
  readonly stretches: readonly Stretch[]
}

/** What the choice of a pull method rests on, gathered from the parts that know it. */
export function pullFacts({ input, line, size, pipes, stretches }: Known): PullFacts {
  const insides = pipes.map((pipe) => (pipe.wallM === null ? null : pipe.outsideDiameterM - 2 * pipe.wallM))
  const smallest = insides.some((inside) => inside === null) ? null : Math.min(...(insides as number[]))
  const isWetSand = (stretch: Stretch): boolean =>
    stretch.state.family === 'sand' &&
    stretch.waterTableM !== null &&
    stretch.waterTableM < stretch.axisDepthM
  const longestShotM = Math.max(...line.shots.map((shot) => shot.toM - shot.fromM))
  const lastHose = hosesToTool(input.air).at(-1)
  return {
    asked: input.pull,
    lengthM: longestShotM,
    boreDiameterM: size.diameterM,
    bundleDiameterM: size.bundleM,
    largestPipeM: Math.max(...pipes.map((pipe) => pipe.outsideDiameterM)),
    smallestInsideM: smallest,
    pipeCount: pipes.reduce((sum, pipe) => sum + pipe.count, 0),
    isJointed: pipes.some((pipe) => pipe.isJointed),
    isBendable: pipes.every((pipe) => !pipe.isJointed),
    holeCloses: stretches.some((stretch) => stretch.state.holeCloses || isWetSand(stretch)),
    hoseBoreM: lastHose?.boreM ?? 0,
    hoseLengthM: hosesToTool(input.air).reduce((sum, hose) => sum + hose.lengthM, 0),
    isReversible: input.tool.reversible,
    isExpanded: size.isExpanded,
  }
}
