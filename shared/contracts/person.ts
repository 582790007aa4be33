import { idOf, nounFile } from './noun-parts.ts'
import { shortText } from './quantity-field.ts'

/** Somebody who works here. It lists them; it lets nobody in. */
export const personFile = nounFile('underlane/person@1', {
  crew: idOf('the crew').optional(),
  telephone: shortText(40).optional(),
})
