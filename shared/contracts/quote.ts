import { z } from 'zod'
import { day, idOf, nounFile } from './noun-parts.ts'
import { choice } from './quantity-field.ts'

/** What a customer was told a job will cost. */
export const quoteFile = nounFile('underlane/quote@1', {
  job: idOf('the job'),
  on: day.optional(),
  state: choice(['draft', 'sent', 'accepted', 'declined']),
  currency: z.string().regex(/^[A-Z]{3}$/, 'a three-letter currency code'),
  quotedMinorUnits: z.number().int().min(0).max(1e11),
})
