import { z } from 'zod'

/** What the program answers when it will not do as asked: every problem at once, each with its place and a sentence. */
export const refusal = z.object({
  schema: z.literal('underlane/refusal@1'),
  issues: z.array(
    z.object({
      path: z.string().describe('where it is: dotted, empty for the whole'),
      code: z.string(),
      given: z.string().optional(),
      accepted: z.string().optional(),
      candidates: z.array(z.object({ value: z.string(), means: z.string() })).optional(),
      values: z.record(z.string(), z.union([z.number(), z.string()])).optional(),
      text: z.string().describe('the sentence, in the language asked for'),
    }),
  ),
})
export type Refusal = z.infer<typeof refusal>
