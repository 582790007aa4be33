import { z } from 'zod'
import { AIR_STATES, OILING } from '../core/shop/exposure.ts'
import { day, idOf, nounFile } from './noun-parts.ts'
import { choice, quantity } from './quantity-field.ts'

/** What happened while one shot was bored. */
export const boreLogFile = nounFile('underlane/bore-log@1', {
  crossing: idOf('the crossing'),
  on: day,
  shot: z.number().int().min(1).max(60).optional(),
  outcome: choice(['arrived', 'stopped', 'given-up']).optional(),
  length: quantity('length', 'refuse', { min: 0, max: 1000 }).optional(),
  hammerTime: quantity('duration', 'refuse', { min: 0, max: 1e6 }).optional(),
  tool: idOf('the tool').optional(),
  pressure: quantity('gaugePressure', 'refuse', { min: 0, max: 2.5e6 }).optional(),
  /** How the ground wears steel, from 1 (not at all) to 6 (extremely): the classes of the LCPC test. */
  abrasivity: z.number().int().min(1).max(6).optional(),
  oil: choice(OILING).optional(),
  air: choice(AIR_STATES).optional(),
})
