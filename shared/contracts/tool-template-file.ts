import { z } from 'zod'
import { MEASURES, PART_GROUPS, WEAR_DRIVERS } from '../core/shop/template.ts'
import { nounFile } from './noun-parts.ts'
import { choice, quantity, shortText } from './quantity-field.ts'

/** Under which a part is known in every sheet, whatever it is called on the screen. */
export const partKey = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  .max(40)
  .describe('a short key: small letters, digits and dashes')

const measureSpec = z.strictObject({
  key: partKey,
  measure: choice(MEASURES),
  nominal: quantity('movement', 'refuse', { min: 0, max: 3 }).optional(),
  limit: quantity('movement', 'refuse', { min: -0.02, max: 3 }).optional(),
  error: quantity('movement', 'refuse', { min: 1e-6, max: 0.01 }).optional(),
})

const partSpec = z.strictObject({
  key: partKey,
  name: shortText(80).optional(),
  group: choice(PART_GROUPS),
  driver: choice(WEAR_DRIVERS),
  torque: shortText(60).optional(),
  leadDays: z.number().int().min(0).max(400).optional(),
  measures: z.array(measureSpec).max(12),
})

const isEachOnce = (keys: readonly string[]): boolean => new Set(keys).size === keys.length

/** What of a tool is looked at: its owner's own list, with sizes, limits and torques from the tool's own manual. */
export const toolTemplateFile = nounFile('underlane/tool-template@1', {
  stripEvery: quantity('duration', 'refuse', { min: 3600, max: 1e8 }).optional(),
  parts: z
    .array(partSpec)
    .min(1)
    .max(60)
    .refine((parts) => isEachOnce(parts.map(({ key }) => key)), { error: 'each key once' })
    .refine((parts) => parts.every(({ measures }) => isEachOnce(measures.map(({ key }) => key))), {
      error: 'each key once',
    }),
})
