import fc from 'fast-check'
import { expect, test } from 'vitest'
import { parseCrossing } from '../../../shared/contracts/crossing.ts'
import { airFixes } from '../../../shared/core/plan/air-fixes.ts'
import { airReach } from '../../../shared/core/plan/air-reach.ts'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import { demoDocument } from '../../support/crossings.ts'

const FILE = demoDocument('firm-clay-service')
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const as = (unit: string, min: number, max: number) => between(min, max).map((value) => `${value} ${unit}`)
const maybe = <Value>(arbitrary: fc.Arbitrary<Value>) => fc.option(arbitrary, { nil: undefined })
const hose = fc.record({
  bore: as('in', 0.13, 4),
  length: as('ft', 0.5, 3000),
  couplings: maybe(fc.integer({ min: 0, max: 40 })),
  parallel: maybe(fc.integer({ min: 1, max: 4 })),
  lossFactor: maybe(between(0.05, 20)),
})
const component = fc.oneof(
  fc.record({ loss: as('psi', 0.01, 70), at: as('cfm', 1, 1000) }),
  fc.record({ conductance: as('L/(s-bar)', 0.1, 1000), criticalRatio: between(0, 0.9) }),
)
const branch = (name: string) =>
  fc.record({
    name: fc.constant(name),
    hoses: fc.array(hose, { maxLength: 2 }),
    regulator: maybe(as('psi', 5, 150)),
  })
const anyAir = fc.record({
  compressor: fc.record({
    freeAirDelivery: as('cfm', 1, 3000),
    pressure: as('psig', 5, 350),
    reference: maybe(fc.constantFrom('inlet', 'iso', 'scfm', 'normal')),
    engine: maybe(fc.constantFrom('aspirated', 'turbo')),
  }),
  separator: maybe(component),
  valves: maybe(
    fc.array(fc.record({ kind: fc.constantFrom('ball', 'globe'), bore: as('in', 0.2, 3) }), { maxLength: 2 }),
  ),
  regulator: maybe(as('psi', 5, 150)),
  hoses: fc.array(hose, { minLength: 1, maxLength: 3 }),
  oiler: maybe(component),
  whip: maybe(fc.record({ bore: as('in', 0.2, 2), length: as('ft', 1, 30) })),
  receiver: maybe(as('gal', 0.1, 1000)),
  branches: maybe(fc.tuple(branch('a'), branch('b')).map((both) => [...both])),
  altitude: maybe(as('ft', -1000, 19_000)),
  temperature: maybe(as('F', -50, 130)),
  humidity: maybe(as('%', 0, 100)),
  exponent: maybe(between(0, 3)),
})

/** Paths of numbers that are none. */
const strays = (value: unknown, at: string): readonly string[] => {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [at]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, inner]) => strays(inner, `${at}.${key}`))
}

test('any air line that can be written is planned in finite numbers, or refused with a reason', () => {
  fc.assert(
    fc.property(anyAir, as('cfm', 1, 900), (air, airDemand) => {
      const file = JSON.parse(
        JSON.stringify({
          ...FILE,
          spread: { draws: 64 },
          air,
          tool: { diameter: '4 in', airDemand, ratedPressure: '90 psi' },
        }),
      )
      const parsed = parseCrossing(file)
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues))
      const plan = planCrossing(parsed.value)
      if (!plan.ok) {
        expect(plan.issues.map((issue) => issue.code)).toEqual(['no-operating-point'])
        expect(['choked', 'no-pressure']).toContain(plan.issues[0]?.values?.why)
        return
      }
      expect(strays(plan.value, 'plan')).toEqual([])
      expect(strays(airReach(parsed.value, 586_000), 'reach')).toEqual([])
    }),
    { seed: 6358, numRuns: 250 },
  )
}, 60_000)

test('and so is every change offered for it', () => {
  fc.assert(
    fc.property(anyAir, (air) => {
      const parsed = parseCrossing(JSON.parse(JSON.stringify({ ...FILE, spread: { draws: 64 }, air })))
      const plan = parsed.ok ? planCrossing(parsed.value) : parsed
      if (!parsed.ok || !plan.ok) return
      expect(strays(airFixes(parsed.value, plan.value), 'fixes')).toEqual([])
    }),
    { seed: 841, numRuns: 40 },
  )
}, 60_000)
