import { type Component, componentOutlet, LUBRICATOR } from './component-outlet.ts'
import { COUPLING_LOSS_COEFFICIENT, HOSE_ROUGHNESS_M, hoseOutlet } from './hose-outlet.ts'
import type { Outlet } from './isothermal-outlet.ts'

/** A hose has two ends. */
const COUPLINGS_PER_HOSE = 2

export type HoseInLine = {
  readonly boreM: number
  readonly lengthM: number
  /** Absent: two. */
  readonly couplings?: number
  /** K of each on the hose's bore; absent: 1.0. */
  readonly couplingCoefficient?: number
  /** ε of the inside wall; absent: a rubber hose's. */
  readonly roughnessM?: number
  /** What a reading says the hose loses over what it is reckoned to; absent: 1. */
  readonly lossFactor?: number
  /** Like lines side by side; absent: one. */
  readonly parallel?: number
}

export type HoseElement = HoseInLine & { readonly kind: 'hose' | 'whip' }
export type ComponentElement = Component & { readonly kind: 'separator' | 'lubricator' }
/** K velocity heads on its own bore. */
type ValveElement = { readonly kind: 'valve'; readonly boreM: number; readonly coefficient: number }
/** Lets no more through than what it is set to; what it loses wide open is left to a valve or a component beside it. */
export type RegulatorElement = { readonly kind: 'regulator'; readonly setAbsPa: number }

/** What the air meets between compressor and tool. */
export type AirElement = HoseElement | ComponentElement | ValveElement | RegulatorElement

/** The oiler nobody has described. */
export const OUR_OILER: ComponentElement = { kind: 'lubricator', ...LUBRICATOR }

type Through = {
  readonly massFlowKgPerS: number
  readonly inletAbsPa: number
  readonly temperatureK: number
}

/** Pressure behind one element, or that it chokes. */
function elementOutlet(element: AirElement, flow: Through): Outlet {
  switch (element.kind) {
    case 'separator':
    case 'lubricator':
      return componentOutlet(element, flow)
    case 'regulator':
      return { ok: true, outletAbsPa: Math.min(flow.inletAbsPa, element.setAbsPa) }
    case 'valve':
      return pipeOutlet(VALVE_WALL, element.boreM, element.coefficient, flow)
    case 'hose':
    case 'whip':
      return pipeOutlet(
        element,
        element.boreM,
        (element.couplings ?? COUPLINGS_PER_HOSE) *
          (element.couplingCoefficient ?? COUPLING_LOSS_COEFFICIENT),
        flow,
      )
  }
}

/** A valve has no length, so no wall. */
const VALVE_WALL = { lengthM: 0, roughnessM: 0 } as const

/** Field by field: this runs a thousand times a solve, and copying objects whole costs five times the sum itself. */
const pipeOutlet = (
  wall: Pick<HoseInLine, 'lengthM' | 'roughnessM' | 'lossFactor' | 'parallel'>,
  boreM: number,
  fittings: number,
  flow: Through,
): Outlet =>
  hoseOutlet({
    boreM,
    lengthM: wall.lengthM,
    roughnessM: wall.roughnessM ?? HOSE_ROUGHNESS_M,
    couplings: 1,
    massFlowKgPerS: flow.massFlowKgPerS / (wall.parallel ?? 1),
    inletAbsPa: flow.inletAbsPa,
    temperatureK: flow.temperatureK,
    couplingCoefficient: fittings,
    lossFactor: wall.lossFactor ?? 1,
  })

export type LineStep = {
  readonly element: AirElement['kind']
  /** Which of its kind, from the compressor: 1, 2, … */
  readonly number: number
  readonly inletAbsPa: number
  readonly outletAbsPa: number
}

/** Walks the air through the elements in their order; null where it chokes on the way. */
export function lineSteps(
  elements: readonly AirElement[],
  massFlowKgPerS: number,
  inletAbsPa: number,
  temperatureK: number,
): LineStep[] | null {
  const steps: LineStep[] = []
  const counted = new Map<AirElement['kind'], number>()
  let pressureAbsPa = inletAbsPa
  for (const element of elements) {
    const found = elementOutlet(element, { massFlowKgPerS, inletAbsPa: pressureAbsPa, temperatureK })
    if (!found.ok) return null
    const number = (counted.get(element.kind) ?? 0) + 1
    counted.set(element.kind, number)
    steps.push({
      element: element.kind,
      number,
      inletAbsPa: pressureAbsPa,
      outletAbsPa: found.outletAbsPa,
    })
    pressureAbsPa = found.outletAbsPa
  }
  return steps
}

/** The pressure at the end alone; null where it chokes. */
export function lineEndAbsPa(
  elements: readonly AirElement[],
  massFlowKgPerS: number,
  inletAbsPa: number,
  temperatureK: number,
): number | null {
  let pressureAbsPa = inletAbsPa
  for (const element of elements) {
    const found = elementOutlet(element, { massFlowKgPerS, inletAbsPa: pressureAbsPa, temperatureK })
    if (!found.ok) return null
    pressureAbsPa = found.outletAbsPa
  }
  return pressureAbsPa
}
