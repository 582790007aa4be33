import { z } from 'zod'
import { HEADS } from '../core/plan/crossing-input.ts'
import { day, idOf, nounFile } from './noun-parts.ts'
import { choice, quantity, shortText } from './quantity-field.ts'

/**
 * A piercing tool on the shelf; the keys are those of a crossing's `tool`, each quantity with its unit. What the shop adds:
 * the template it is looked at by, how far its striker travels, what the crew complained of, and why it was taken out of
 * use.
 */
export const toolFile = nounFile('underlane/tool@1', {
  serial: shortText(80).optional(),
  diameter: quantity('diameter', 'refuse', { min: 0.025, max: 0.4 }),
  length: quantity('length', 'refuse', { min: 0.3, max: 5 }).optional(),
  mass: quantity('mass', 'refuse', { min: 1, max: 2000 }).optional(),
  blowEnergy: quantity('energy', 'refuse', { min: 1, max: 5000 }).optional(),
  blowRate: quantity('frequency', 'refuse', { min: 0.5, max: 60 }).optional(),
  airDemand: quantity('volumeFlow', 'refuse', { min: 1e-4, max: 1 }).optional(),
  ratedPressure: quantity('gaugePressure', 'refuse', { min: 1e5, max: 2.5e6 }).optional(),
  head: choice(HEADS).optional(),
  stroke: quantity('diameter', 'refuse', { min: 0.02, max: 1 }).optional(),
  template: idOf('the template it is looked at by').optional(),
  complaint: z.strictObject({ on: day, words: shortText(500) }).optional(),
  withdrawn: shortText(300).optional(),
})
