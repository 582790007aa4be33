import { z } from 'zod'
import type { EmergencyInput } from '../core/plan/asked-input.ts'
import { orNull, shortText } from './quantity-field.ts'

/** What the emergency card says of this place; filled before the bore, read when there is no time. */
export const emergency = z
  .strictObject({
    address: orNull(shortText(200)),
    meeting: orNull(shortText(200)),
    caller: orNull(shortText(120)),
    engines: orNull(shortText(200)),
    numbers: z
      .array(z.strictObject({ who: shortText(120), phone: shortText(60) }))
      .max(30)
      .optional(),
  })
  .transform((given): EmergencyInput => ({ ...given, numbers: given.numbers ?? [] }))
