import { z } from 'zod'
import { idOf, nounFile } from './noun-parts.ts'

/** Who goes out together. */
export const crewFile = nounFile('underlane/crew@1', {
  people: z.array(idOf('a person')).max(40).optional(),
})
