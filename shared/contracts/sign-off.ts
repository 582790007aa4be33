import { day, idOf, nounFile } from './noun-parts.ts'
import { choice, shortText } from './quantity-field.ts'

/** Who put their name to what, on which day. It is a record: it makes nothing ready by itself. */
export const signOffFile = nounFile('underlane/sign-off@1', {
  crossing: idOf('the crossing'),
  on: day,
  layer: choice(['day', 'site', 'bore']),
  by: shortText(120),
})
