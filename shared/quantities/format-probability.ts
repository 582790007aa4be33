/** The words around a chance too small or too large for a percentage; text/ gives the other languages. */
export type ProbabilityWords = {
  readonly underOneInThousand: string
  readonly underOnePercent: string
  readonly overNinetyNinePercent: string
}

const ENGLISH: ProbabilityWords = {
  underOneInThousand: 'less than 1 in 1,000',
  underOnePercent: 'less than 1 %',
  overNinetyNinePercent: 'more than 99 %',
}

/**
 * A chance to 1 %. Below 0.001 only the bound is said, never a figure; what is not certain never shows as 0 % or 100 %.
 * Outside 0 … 1, and not a number: null, for the caller to say why there is none.
 */
export function formatProbability(probability: number, words: ProbabilityWords = ENGLISH): string | null {
  if (!(probability >= 0 && probability <= 1)) return null
  if (probability <= 0.001) return words.underOneInThousand
  if (probability < 0.005) return words.underOnePercent
  if (probability === 1) return '100 %'
  const percent = Math.round(probability * 100)
  return percent >= 100 ? words.overNinetyNinePercent : `${percent} %`
}
