import { componentOutlet, LUBRICATOR } from './component-outlet.ts'
import { HOSE_ROUGHNESS_M, hoseOutlet } from './hose-outlet.ts'

/** A hose has two ends. */
export const COUPLINGS_PER_HOSE = 2

export type HoseInLine = {
  readonly boreM: number
  readonly lengthM: number
  /** K 1.0 each; absent: two. */
  readonly couplings?: number
  /** ε of the inside wall; absent: a rubber hose's. */
  readonly roughnessM?: number
}

/** What lies between compressor and tools, in the order the air meets it; the lubricator last, at the tool end. */
export type AirLine = {
  readonly hoses: readonly HoseInLine[]
  readonly lubricator: boolean
  readonly temperatureK: number
}

export type LineStep = {
  readonly element: 'hose' | 'lubricator'
  /** Which hose, from the compressor: 1, 2, … */
  readonly number: number
  readonly inletAbsPa: number
  readonly outletAbsPa: number
}

/** Walks the air down the line; null where it chokes on the way. */
export function lineSteps(line: AirLine, massFlowKgPerS: number, inletAbsPa: number): LineStep[] | null {
  const { temperatureK } = line
  const steps: LineStep[] = []
  let pressureAbsPa = inletAbsPa
  for (const [index, hose] of line.hoses.entries()) {
    const found = hoseOutlet({
      boreM: hose.boreM,
      lengthM: hose.lengthM,
      couplings: hose.couplings ?? COUPLINGS_PER_HOSE,
      roughnessM: hose.roughnessM ?? HOSE_ROUGHNESS_M,
      massFlowKgPerS,
      inletAbsPa: pressureAbsPa,
      temperatureK,
    })
    if (!found.ok) return null
    steps.push({
      element: 'hose',
      number: index + 1,
      inletAbsPa: pressureAbsPa,
      outletAbsPa: found.outletAbsPa,
    })
    pressureAbsPa = found.outletAbsPa
  }
  if (line.lubricator) {
    const found = componentOutlet(LUBRICATOR, { massFlowKgPerS, inletAbsPa: pressureAbsPa, temperatureK })
    if (!found.ok) return null
    steps.push({
      element: 'lubricator',
      number: 1,
      inletAbsPa: pressureAbsPa,
      outletAbsPa: found.outletAbsPa,
    })
  }
  return steps
}
