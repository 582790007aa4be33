import { nounFile } from './noun-parts.ts'
import { shortText } from './quantity-field.ts'

/** Whoever pays. */
export const customerFile = nounFile('underlane/customer@1', {
  place: shortText(400).optional(),
  telephone: shortText(40).optional(),
  email: shortText(254).optional(),
})
