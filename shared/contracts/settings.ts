import { z } from 'zod'
import { jurisdictionEdit } from './jurisdiction-edit.ts'
import { nounFile } from './noun-parts.ts'
import { choice } from './quantity-field.ts'

/** What a firm has chosen for everybody in it. */
export const settingsFile = nounFile('underlane/settings@1', {
  units: choice(['si', 'us']).optional(),
  language: choice(['en', 'es']).optional(),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/, 'a three-letter currency code')
    .optional(),
  jurisdictions: z.array(jurisdictionEdit).max(200).optional(),
})
