import { z } from 'zod'
import type { Noun } from './noun.ts'

/**
 * A crossing file as it was given. Only the name is looked at here: the file is parsed in full where it is planned,
 * so that one stored by an older version still opens.
 */
const crossingDocument = z.looseObject({ name: z.string() })
export type CrossingDocument = z.infer<typeof crossingDocument>

/** The very object that was given: zod would put the keys it knows first. */
function readCrossing(given: unknown): CrossingDocument {
  crossingDocument.parse(given)
  return given as CrossingDocument
}

export const CROSSING: Noun<CrossingDocument> = {
  table: 'crossing',
  format: 'underlane/crossing@1',
  nameOf: (document) => document.name,
  read: readCrossing,
}
