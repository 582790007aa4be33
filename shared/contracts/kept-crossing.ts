import { z } from 'zod'

/** What the server keeps of a crossing, and how it answers. Loose where an older engine's result must still open. */

const fileOfCrossing = z
  .record(z.string(), z.json())
  .describe('the crossing file, underlane/crossing@1, as it was sent')
const planAsMade = z
  .record(z.string(), z.json())
  .nullable()
  .describe('the result, underlane/plan@1, as made by `engine` at the save; null with reasons in `issues`')

const answeredIssue = z.object({
  path: z.string().describe('where it is: dotted, empty for the whole'),
  code: z.string(),
  given: z.string().optional(),
  accepted: z.string().optional(),
  candidates: z.array(z.object({ value: z.string(), means: z.string() })).optional(),
  values: z.record(z.string(), z.union([z.number(), z.string()])).optional(),
  text: z.string().describe('the sentence, in the language asked for'),
})

const crossingStatus = z.enum(['hold', 'check', 'no-plan'])

const listed = {
  id: z.guid().describe('made by whoever creates it'),
  version: z.number().int().min(1).describe('rises by one with each change'),
  format: z.string(),
  name: z.string(),
  updatedAt: z.string().describe('UTC, ISO 8601'),
  deletedAt: z.string().nullable(),
  demo: z.boolean().describe('came with the invented town'),
  status: crossingStatus.nullable().describe('of the result; null while nothing has been worked out'),
  engine: z.string().nullable(),
  document: fileOfCrossing,
}

const listedCrossing = z.object(listed)
export type ListedCrossing = z.infer<typeof listedCrossing>

export const crossingPage = z.object({ items: z.array(listedCrossing), next: z.string().nullable() })

export const keptCrossing = z.object({
  ...listed,
  inputSha256: z.string().nullable(),
  result: planAsMade,
  issues: z.array(answeredIssue).describe('why there is no result'),
})
export type KeptCrossing = z.infer<typeof keptCrossing>

export const crossingHistory = z.object({
  items: z.array(
    z.object({
      version: z.number().int(),
      action: z.enum(['insert', 'replace', 'remove', 'restore']),
      who: z.string(),
      at: z.string(),
      document: fileOfCrossing.nullable().describe('as it was from then on; null when removed'),
    }),
  ),
  next: z.number().int().nullable(),
})

export const apiError = z.object({
  code: z.string(),
  requestId: z.string(),
  issues: z.array(answeredIssue),
})

/** Somebody else was faster, or no version was named: what is there now comes along, to merge with. */
export const changeConflict = z.object({ ...apiError.shape, current: keptCrossing })
