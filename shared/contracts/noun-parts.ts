import { z } from 'zod'
import { shortText } from './quantity-field.ts'

/** What documents of several nouns have in common. */

export const idOf = (what: string) => z.guid().toLowerCase().describe(`the id of ${what}`)

export const day = z.iso.date().describe('a day, 2026-03-02')

export const notes = z.string().max(10_000).optional()

/** A document of a noun: its format may be written into it, its name is what a list calls it, and no key is unknown. */
export const nounFile = <const Format extends string, Shape extends z.ZodRawShape>(
  format: Format,
  shape: Shape,
) =>
  z.strictObject({
    schema: z.literal(format).optional(),
    name: shortText(200),
    ...shape,
    notes,
  })
