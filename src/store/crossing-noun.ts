import { z } from 'zod'
import type { Noun } from './noun.ts'
import type { CrossingKeys } from './tables.ts'

/**
 * A crossing file as it was given. Only the name is looked at here: the file is parsed in full where it is planned,
 * so that one stored by an older version still opens.
 */
const crossingDocument = z.looseObject({ name: z.string() })
export type CrossingDocument = z.infer<typeof crossingDocument>

export const CROSSING: Noun<CrossingDocument, CrossingKeys> = {
  table: 'crossing',
  format: 'underlane/crossing@1',
  keys: (document) => ({ name: document.name }),
  read: (document) => crossingDocument.parse(document),
}
