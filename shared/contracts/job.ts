import { z } from 'zod'
import { day, idOf, nounFile } from './noun-parts.ts'
import { shortText } from './quantity-field.ts'

/** A job: what a customer wants done in one place, made of crossings. */
export const jobFile = nounFile('underlane/job@1', {
  customer: idOf('the customer').optional(),
  on: day.optional(),
  place: shortText(400).optional(),
  crossings: z.array(idOf('a crossing')).max(500).optional(),
})
