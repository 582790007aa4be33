import { z } from 'zod'
import { rateBook } from './rate-book.ts'

/** A rate book of the user's own, as a crossing may write it out under `rates`. */
export const rateBookFile = z.strictObject({
  schema: z.literal('underlane/rate-book@1').optional(),
  ...rateBook.shape,
})
