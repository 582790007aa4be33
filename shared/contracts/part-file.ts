import { z } from 'zod'
import { day, idOf, nounFile } from './noun-parts.ts'
import { quantity, shortText } from './quantity-field.ts'
import { partKey } from './tool-template-file.ts'

/**
 * One piece that is kept apart from the tool it sits in, so that its history goes with it: `fitted` says in which tool it
 * was from which day on, and to which. `tool` is where it is now; a piece on the shelf has none.
 */
export const partFile = nounFile('underlane/part@1', {
  key: partKey,
  serial: shortText(80).optional(),
  tool: idOf('the tool it sits in now').optional(),
  fitted: z
    .array(z.strictObject({ tool: idOf('the tool'), on: day, off: day.optional() }))
    .max(200)
    .optional(),
  /** Use it came with, when it was not new. */
  usedBefore: quantity('duration', 'refuse', { min: 0, max: 1e8 }).optional(),
})
