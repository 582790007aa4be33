import { z } from 'zod'
import type { Kind } from '../core/kinds.ts'
import type { Issue } from '../core/outcome.ts'
import { nearestWord } from '../quantities/nearest-word.ts'
import { parseQuantity } from '../quantities/parse-quantity.ts'

/** What a bare number in this file means; 'refuse' unless the file says its units. */
export type BareNumbers = 'refuse' | 'si' | 'us'

type Bounds = { readonly min?: number; readonly max?: number; readonly words?: string }
type Found = Omit<Issue, 'path'>

/** Hands one of our own issues to zod; `zodIssues` takes it out again with its path. */
export function addIssue(ctx: z.RefinementCtx, issue: Found, path: readonly (string | number)[] = []): void {
  ctx.addIssue({ code: 'custom', message: issue.code, path: [...path], params: { issue } })
}

/**
 * A quantity of one kind, given as text with a unit. `min` and `max` are physical limits in SI, not good practice:
 * outside them the number is refused; a bad idea inside them is planned and held.
 */
export function quantity(kind: Kind, bare: BareNumbers, bounds: Bounds = {}) {
  return z
    .unknown()
    .transform((given, ctx): number => {
      if (given === undefined || given === null) {
        addIssue(ctx, { code: 'required', accepted: kind })
        return z.NEVER
      }
      const parsed = parseQuantity(given, kind, { bare })
      if (!parsed.ok) {
        addIssue(ctx, parsed.issue)
        return z.NEVER
      }
      const low = bounds.min !== undefined && parsed.valueSi < bounds.min
      const high = bounds.max !== undefined && parsed.valueSi > bounds.max
      if (low || high) {
        addIssue(ctx, {
          code: 'out-of-range',
          given: String(given),
          values: {
            kind,
            ...(bounds.min === undefined ? {} : { min: bounds.min }),
            ...(bounds.max === undefined ? {} : { max: bounds.max }),
          },
        })
        return z.NEVER
      }
      return parsed.valueSi
    })
    .meta({
      type: ['string', 'number'],
      description: bounds.words ?? `a ${kind} with its unit`,
      'x-kind': kind,
    })
}

/** The listed word nearest to what was typed, by its own spelling or by another name it goes under. */
function nearestOf(
  wanted: string,
  words: readonly string[],
  aliases: Readonly<Record<string, string>>,
): string | null {
  const nearest = nearestWord(wanted, [...words, ...Object.keys(aliases)])
  if (nearest === null) return null
  return Object.hasOwn(aliases, nearest) ? (aliases[nearest] ?? nearest) : nearest
}

type Aliases<Word extends string> = Readonly<Record<string, Word>>

/**
 * A word out of a short list. `aliases` are other spellings of the very same thing and are taken; a near miss is answered
 * with the nearest.
 */
export function choice<const Words extends readonly string[]>(
  words: Words,
  aliases: Aliases<Words[number]> = {},
) {
  return z
    .unknown()
    .transform((given, ctx): Words[number] => {
      const wanted = typeof given === 'string' ? given.trim().toLowerCase() : null
      const found =
        words.find((word) => word.toLowerCase() === wanted) ??
        (wanted !== null && Object.hasOwn(aliases, wanted) ? aliases[wanted] : undefined)
      if (found !== undefined) return found
      const value = wanted === null ? null : nearestOf(wanted, words, aliases)
      addIssue(ctx, {
        code: given === undefined || given === null ? 'required' : 'unknown-choice',
        ...(given === undefined || given === null ? {} : { given: printable(given) }),
        accepted: words.join(', '),
        ...(value === null ? {} : { candidates: [{ value, means: 'the nearest known word' }] }),
      })
      return z.NEVER
    })
    .meta({ type: 'string', enum: [...words] })
}

/** As much of a stray value as is fit to be shown back. */
export function printable(given: unknown): string {
  const text = typeof given === 'string' ? given : (JSON.stringify(given) ?? String(given))
  return text.length > 80 ? `${text.slice(0, 77)}...` : text
}

/** Absent means null inside; JSON's own null is a wrong type, so that it is not taken for an answer. */
export const orNull = <Schema extends z.ZodType>(schema: Schema) =>
  schema.optional().transform((value): z.output<Schema> | null => value ?? null)

export const shortText = (max: number) => z.string().trim().min(1).max(max)
