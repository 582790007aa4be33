import { z } from 'zod'
import { day, idOf, nounFile } from './noun-parts.ts'

/** One crew's day: which crossings, in which order. */
export const dayFile = nounFile('underlane/day@1', {
  on: day,
  crew: idOf('the crew').optional(),
  crossings: z.array(idOf('a crossing')).max(60).optional(),
  /** Which tool goes to which of them. */
  tools: z
    .array(z.strictObject({ crossing: idOf('a crossing'), tool: idOf('the tool') }))
    .max(60)
    .optional(),
})
