import { groundDisplacement } from '../ground/ground-displacement.ts'
import { vibrationPpv } from '../ground/vibration-ppv.ts'
import type { Trace } from '../trace.ts'
import type { BoreLine } from './bore-line.ts'
import type { Stretch } from './stretches.ts'

type Facts = {
  readonly line: BoreLine
  readonly stretches: readonly Stretch[]
  readonly boreDiameterM: number
  readonly blowEnergyJ: number
}

/** Blow energy through ground of this state, by the factor of the published relation. */
function groundFactorAt({ stretches }: Facts, stationM: number): number {
  const state = stretches.find((s) => stationM >= s.fromM && stationM <= s.toM)?.state
  if (!state) return 1.5
  if (['very-stiff', 'hard', 'dense', 'very-dense'].includes(state.stateCode)) return 3
  return ['very-soft', 'soft', 'very-loose', 'loose'].includes(state.stateCode) ? 1 : 1.5
}

const heaveFactorAt = ({ stretches }: Facts, stationM: number): number =>
  stretches.find((s) => stationM >= s.fromM && stationM <= s.toM)?.state.heaveVolumeFactor.mid ?? 1

/** What the ground does to a line beside the bore: how far it is pushed and shaken; checks beside the clearance. */
export function neighbour(
  facts: Facts,
  stationM: number,
  separationM: number,
  centreM: number,
  trace: Trace,
  about: string,
): { readonly displacementM: number; readonly ppvMPerS: number } {
  const moved = trace.run(
    groundDisplacement,
    {
      diameterM: facts.boreDiameterM,
      axisDepthM: facts.line.axisDepthM(stationM),
      offsetM: 0,
      depthM: centreM,
      poissonRatio: 0.5,
      volumeFactor: heaveFactorAt(facts, stationM),
    },
    about,
  )
  const shaken = trace.run(
    vibrationPpv,
    {
      energyJ: facts.blowEnergyJ,
      distanceM: Math.max(separationM, facts.boreDiameterM / 2),
      groundFactor: groundFactorAt(facts, stationM),
    },
    about,
  )
  return { displacementM: Math.abs(moved.verticalM), ppvMPerS: shaken.ppvMPerS }
}
