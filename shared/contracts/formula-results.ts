import { z } from 'zod'
import { SOURCES, type SourceKey } from '../sources.ts'

const source = z.enum(Object.keys(SOURCES) as [SourceKey, ...SourceKey[]])
const standing = z.enum(['published', 'second hand', 'common practice', 'our judgement', 'your value'])

/** One formula evaluated, underlane/relation@1: names carry their SI unit. */
export const relationResult = z.object({
  schema: z.literal('underlane/relation@1'),
  id: z.string(),
  inputs: z.record(z.string(), z.unknown()),
  outputs: z.record(z.string(), z.union([z.number(), z.string(), z.null()])),
  defaulted: z.array(z.string()).describe('inputs nobody gave, by the name they are typed with'),
  notes: z.array(
    z.object({
      code: z.literal('outside-range'),
      input: z.string(),
      value: z.number(),
      min: z.number().nullable(),
      max: z.number().nullable(),
    }),
  ),
  sources: z.array(source),
})

/** Every formula against the values printed in its sources, underlane/checks@1; numbers in the unit of the print. */
export const checksResult = z.object({
  schema: z.literal('underlane/checks@1'),
  passed: z.number().int(),
  failed: z.number().int(),
  checks: z.array(
    z.object({
      relation: z.string(),
      name: z.string(),
      given: z.record(z.string(), z.string()),
      output: z.string(),
      unit: z.string(),
      expected: z.union([z.number(), z.string()]),
      computed: z.union([z.number(), z.string()]).nullable(),
      deviation: z.number().nullable(),
      tolerance: z.number().nullable(),
      pass: z.boolean(),
      knownWrong: z.literal(true).optional(),
      standing,
      source,
    }),
  ),
})
