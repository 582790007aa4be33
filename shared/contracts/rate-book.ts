import { z } from 'zod'
import { OVER_KINDS, type RateBook } from '../core/plan/crossing-input.ts'
import { EXAMPLE_RATE_BOOK } from '../tables/example-rate-book.ts'
import { addIssue, printable } from './quantity-field.ts'

const money = z.number().int().min(0).max(1e11)
const fraction = z.number().min(0).max(5)

const restoration = z.strictObject(
  Object.fromEntries(OVER_KINDS.map((kind) => [kind, money])) as Record<
    (typeof OVER_KINDS)[number],
    typeof money
  >,
)

export const rateBook = z.strictObject({
  name: z.string().min(1).max(120),
  invented: z.boolean(),
  currency: z.string().regex(/^[A-Z]{3}$/, 'a three-letter currency code'),
  quoteStepMinorUnits: money.min(1),
  crewPerHourMinorUnits: money,
  crewSize: z.number().int().min(1).max(20),
  watcherPerHourMinorUnits: money,
  mobilisationMinorUnits: money,
  pitMinorUnits: money,
  shoringPerPitMinorUnits: money,
  potholeMinorUnits: money,
  permitMinorUnits: money,
  fuelPerLitreMinorUnits: money,
  pipePerMetreMinorUnits: money,
  wearPerMetreMinorUnits: money,
  restorationMinorUnits: restoration,
  wallEntryMinorUnits: money,
  openCutPerMetreMinorUnits: money,
  minimumCallOutMinorUnits: money,
  overheadFraction: fraction,
  marginFraction: z.number().min(0).max(0.9),
}) satisfies z.ZodType<RateBook>

/** "example" is our invented book; an object is a book of the user's own. */
export const rates = z
  .unknown()
  .transform((given, ctx): RateBook => {
    if (given === 'example') return EXAMPLE_RATE_BOOK
    if (typeof given === 'string') {
      addIssue(ctx, {
        code: 'unknown-choice',
        given: printable(given),
        accepted: 'example, or a rate book written out',
      })
      return z.NEVER
    }
    const parsed = rateBook.safeParse(given)
    if (parsed.success) return parsed.data
    for (const issue of parsed.error.issues) {
      if (issue.code === 'unrecognized_keys') {
        for (const key of issue.keys)
          addIssue(ctx, { code: 'unknown-key', given: key }, [...pathOf(issue.path), key])
      } else addIssue(ctx, { code: 'wrong-type', accepted: issue.message }, pathOf(issue.path))
    }
    return z.NEVER
  })
  .meta({ description: '"example" for the invented book, or a rate book object' })

const pathOf = (path: readonly PropertyKey[]): (string | number)[] =>
  path.map((step) => (typeof step === 'number' ? step : String(step)))
