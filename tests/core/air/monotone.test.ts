import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { airReach } from '../../../shared/core/plan/air-reach.ts'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import { type CrossingDocument, demoDocument, inputOf } from '../../support/crossings.ts'

const SEEDED = { seed: 1926, numRuns: 40 }
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** One line, told by plain numbers: inches, feet, cfm, psi. */
type Line = {
  readonly freeAir: number
  readonly pressure: number
  readonly bore: number
  readonly length: number
  readonly demand: number
  readonly oilerLoss: number
  readonly couplingShare: number
  readonly altitude: number
  readonly humidity: number
}
const anyLine: fc.Arbitrary<Line> = fc.record({
  freeAir: between(100, 400),
  pressure: between(90, 125),
  bore: between(0.6, 1.5),
  length: between(20, 200),
  demand: between(30, 150),
  oilerLoss: between(0.5, 6),
  couplingShare: between(0.75, 1),
  altitude: between(0, 9000),
  humidity: between(0, 1),
})
const FILE = demoDocument('firm-clay-service')
const fileOf = (line: Line): CrossingDocument => ({
  ...FILE,
  spread: { draws: 64 },
  tool: { diameter: '4 in', airDemand: `${line.demand} cfm`, ratedPressure: '90 psi' },
  air: {
    compressor: {
      freeAirDelivery: `${line.freeAir} cfm`,
      pressure: `${line.pressure} psi`,
      engine: 'aspirated',
    },
    hoses: [
      {
        bore: `${line.bore} in`,
        length: `${line.length} ft`,
        couplingBore: `${line.bore * line.couplingShare} in`,
      },
    ],
    oiler: { loss: `${line.oilerLoss} psi`, at: '185 cfm' },
    altitude: `${line.altitude} ft`,
    humidity: `${line.humidity * 100} %`,
    temperature: '75 F',
  },
})
const toolPa = (line: Line): number => {
  const plan = planCrossing(inputOf(fileOf(line)))
  return plan.ok ? plan.value.air.toolGaugePa : 0
}

/** Which way the pressure at the tool goes with more of each. */
const WAYS = {
  freeAir: 'up',
  pressure: 'up',
  bore: 'up',
  length: 'down',
  demand: 'down',
  oilerLoss: 'down',
  couplingShare: 'up',
  humidity: 'down',
} as const

describe('the pressure at the tool', () => {
  it.each(Object.entries(WAYS))('with more %s goes %s, or stays', (name, way) => {
    fc.assert(
      fc.property(anyLine, between(1.05, 1.5), (line, factor) => {
        const more = {
          ...line,
          [name]: Math.min(
            name === 'couplingShare' || name === 'humidity' ? 1 : 1e9,
            line[name as keyof Line] * factor,
          ),
        }
        const [before, after] = [toolPa(line), toolPa(more)]
        // A sagging machine holds a root to a hundredth of a pascal.
        if (way === 'up') expect(after).toBeGreaterThanOrEqual(before - 0.01)
        else expect(after).toBeLessThanOrEqual(before + 0.01)
      }),
      SEEDED,
    )
  })

  it('that is asked for higher is reached by no longer a hose and no more tools', () => {
    fc.assert(
      fc.property(anyLine, between(50, 80), between(1, 1.2), (line, wantedPsi, factor) => {
        const input = inputOf(fileOf(line))
        const far = (psi: number) => {
          const { longestHoseM, mostTools } = airReach(input, psi * 6894.757)
          const least = (reach: typeof mostTools, most: number) =>
            reach.value ?? (reach.why === 'beyond' ? most : 0)
          return [least(longestHoseM, 300), least(mostTools, 12)] as const
        }
        const [hose, tools] = far(wantedPsi)
        const [shorter, fewer] = far(wantedPsi * factor)
        expect(shorter).toBeLessThanOrEqual(hose + 1e-3)
        expect(fewer).toBeLessThanOrEqual(tools)
      }),
      SEEDED,
    )
  })
})
