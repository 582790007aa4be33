import { z } from 'zod'
import {
  GROUND_FAMILIES,
  type LearnedInput,
  type LearnedPart,
  type PastBoreInput,
} from '../core/plan/learned-input.ts'
import { addIssue, type BareNumbers, choice, orNull, quantity, shortText } from './quantity-field.ts'

const FAMILY_WORDS = { silt: 'frictional', mixed: 'frictional', gravel: 'sand', cohesive: 'clay' } as const
const family = choice(GROUND_FAMILIES, FAMILY_WORDS)

/** A rate multiplier worked out elsewhere, one for each family of ground at most. */
export const learned = z
  .array(
    z
      .strictObject({
        family,
        multiplier: z.number().min(0.05).max(20),
        spread: z.number().min(0.01).max(1),
        bores: z.number().int().min(1).max(100_000),
        scope: orNull(shortText(120)),
      })
      .transform((each): LearnedInput => each),
  )
  .max(GROUND_FAMILIES.length)
  .superRefine((all, ctx) => {
    all.forEach((each, place) => {
      if (all.findIndex((other) => other.family === each.family) === place) return
      addIssue(ctx, { code: 'inputs-conflict', accepted: 'each family of ground once' }, [place, 'family'])
    })
  })

/** A bore already made in this kind of ground with this tool; one that stalled needs neither length nor time. */
export const pastBore = (bare: BareNumbers) =>
  z
    .strictObject({
      family,
      length: orNull(quantity('length', bare, { min: 0.3, max: 1000 })),
      hammerTime: orNull(quantity('duration', bare, { min: 10, max: 1e6 })),
      pressure: orNull(quantity('gaugePressure', bare, { min: 1e5, max: 2.5e6 })),
      stalled: z.boolean().optional(),
      excluded: z.boolean().optional(),
      note: orNull(shortText(200)),
    })
    .transform((bore, ctx): PastBoreInput => {
      const hasStalled = bore.stalled ?? false
      for (const key of ['length', 'hammerTime'] as const) {
        if (!hasStalled && bore[key] === null) {
          addIssue(ctx, { code: 'required', accepted: 'length and time between two hose marks' }, [key])
        }
      }
      return {
        family: bore.family,
        lengthM: bore.length,
        hammerTimeS: bore.hammerTime,
        toolGaugePa: bore.pressure,
        hasStalled,
        isExcluded: bore.excluded ?? false,
        note: bore.note,
      }
    })

const number = z.number()
export const learnedPart = z.strictObject({
  family: z.enum(GROUND_FAMILIES),
  multiplier: number,
  multiplierP10: number,
  multiplierP90: number,
  spread: number,
  bores: number,
  stalled: number.nullable(),
  excluded: number,
  scope: z.string().nullable(),
  from: z.enum(['bores', 'file']),
}) satisfies z.ZodType<LearnedPart>
