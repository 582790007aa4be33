import type { Standing } from '../sources/shape.ts'
import type { SourceKey } from '../sources.ts'

/** A value as the source prints it; the last digit sets the tolerance. */
export type Printed = {
  /** The digits exactly as printed: '7.9501E+4', '0.0174', '3762'. */
  readonly printed: string
  /** The unit it is printed in, in this program's own notation: 'psi', 'kPa', 'in'; absent for plain numbers and words. */
  readonly unit?: string
  /** Only where half the last digit is not the right measure; absolute in the printed unit, or a fraction of the value. */
  readonly tolerance?: { readonly absolute: number } | { readonly fraction: number }
  /** Required with `tolerance`. */
  readonly why?: string
}

export type PublishedCheck = {
  readonly relation: string
  /** Tells this row from the others of the relation: '2000 m', 'Example 7-16'. */
  readonly name: string
  /** Inputs as a person would type them to the relation. */
  readonly given: Readonly<Record<string, string>>
  /** By the name of the output with its unit tail: { pressurePa: { printed: '7.9501E+4', unit: 'Pa' } }. */
  readonly expected: Readonly<Record<string, Printed>>
  readonly source: SourceKey
  readonly standing: Standing
  /** A value known to be wrong in print: the check must NOT be met. */
  readonly knownWrong?: true
}
