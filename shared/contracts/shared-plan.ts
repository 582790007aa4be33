import { z } from 'zod'

/**
 * What a link shows somebody without an account, and nothing else: this list is the promise. Not shown: price and rates,
 * the customer, notes, tool and compressor, crew, who made or changed it, history, attachments.
 */

const number = z.number()
const coded = z.strictObject({ code: z.string(), text: z.string().describe('the sentence') })

export const sharedPlan = z.strictObject({
  schema: z.literal('underlane/shared-plan@1'),
  name: z.string().describe('what the crossing is called'),
  changedAt: z.string().describe('when it was changed last'),
  expiresAt: z.string().describe('when the link ends'),
  engine: z.string(),
  /** null where it has no physical answer. */
  plan: z
    .strictObject({
      status: z.enum(['hold', 'check']),
      statusText: z.string(),
      reasons: z.array(coded),
      cautions: z.array(coded),
      bore: z.strictObject({ lengthM: number, diameterM: number, coverM: number }),
      shots: z.array(z.strictObject({ fromM: number, toM: number, depthFromM: number, depthToM: number })),
      lines: z
        .array(
          z.strictObject({
            kind: z.string(),
            stationM: number.nullable(),
            axisDepthM: number,
            separationM: number.nullable(),
            requiredM: number,
            shortM: number.nullable(),
          }),
        )
        .describe('the lines crossed that were named: there may be others'),
      drawing: z
        .string()
        .describe('the long section as SVG: ground, surfaces, pits, pipe, bore, lines crossed'),
    })
    .nullable(),
})
export type SharedPlan = z.infer<typeof sharedPlan>
