import { expect, test } from 'vitest'
import { hoseFactorOfReading } from '../../../shared/core/plan/air-reading.ts'
import { type CrossingDocument, demoDocument, inputOf, planOf } from '../../support/crossings.ts'

const PSI_PA = 6894.757293168361
const FILE = demoDocument('firm-clay-service')
const withHose = (hose: CrossingDocument): CrossingDocument => ({
  ...FILE,
  tool: { diameter: '4 in', airDemand: '100 cfm', ratedPressure: '90 psi' },
  air: {
    compressor: { freeAirDelivery: '185 cfm', pressure: '100 psi' },
    hoses: [{ bore: '3/4 in', length: '100 ft', ...hose }],
  },
})

test('a gauge that shows 92 psi at the tool at 100 ft: the plan then says 92 psi, by that reading', () => {
  const factor = hoseFactorOfReading(inputOf(withHose({})), 92 * PSI_PA)
  if (factor === null) throw new Error('no factor')
  const { air } = planOf(withHose({ lossFactor: factor, measuredOn: '2026-11-20' }))
  expect(air.toolGaugePa / PSI_PA).toBeCloseTo(92, 4)
  expect(air.band?.why).toBe('reading')
  expect(air.band?.lowGaugePa ?? 0).toBeLessThan(air.toolGaugePa)
})

test('what the plan itself says is a factor of one', () => {
  const read = planOf(withHose({})).air.toolGaugePa
  expect(hoseFactorOfReading(inputOf(withHose({})), read)).toBeCloseTo(1, 6)
})

test('a reading no hose gives is none', () => {
  expect(hoseFactorOfReading(inputOf(withHose({})), 140 * PSI_PA)).toBeNull()
})
