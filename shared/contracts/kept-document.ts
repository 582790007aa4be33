import { z } from 'zod'
import { crossingHistory, keptCrossing } from './kept-crossing.ts'

/** What the server answers about a document of any noun but a crossing: nothing is worked out from it. */

const document = z.record(z.string(), z.json()).describe('the document, as it was sent')

const listed = {
  ...keptCrossing.shape,
  document,
  status: z.null(),
  engine: z.null(),
} as const

export const keptDocument = z.object({
  ...listed,
  inputSha256: z.null(),
  result: z.null(),
  issues: z.array(z.never()),
})

export const documentPage = z.object({
  items: z.array(z.object(listed).omit({ inputSha256: true, result: true, issues: true })),
  next: z.string().nullable(),
})

/** The lines of a history look alike whatever they are of. */
export const documentHistory = crossingHistory
