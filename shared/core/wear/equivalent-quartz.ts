import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'

/** Share of quartz that would grind as hard, by Mohs hardness in half steps. */
const FACTOR_OF_MOHS: Readonly<Record<string, number>> = {
  1: 0,
  1.5: 0,
  2: 0.0021,
  2.5: 0.015,
  3: 0.036,
  3.5: 0.038,
  4: 0.042,
  4.5: 0.047,
  5: 0.055,
  5.5: 0.16,
  6: 0.31,
  6.5: 0.55,
  7: 1,
}
/** Rounding of shares that were read off a chart. */
const ROUNDING = 1e-6

/** Equivalent quartz content of a soil or stone from what it is made of; a first idea of how it grinds. */
export const equivalentQuartz = relation({
  id: 'equivalent-quartz',
  title: 'Equivalent quartz content',
  formula: 'EQC = Σ share × factor(Mohs hardness)',
  sources: ['MohsQuartzNote'],
  inputs: {
    shares: { list: 'numbers', words: 'share of each mineral, 0 to 1' },
    mohs: { list: 'numbers', words: 'Mohs hardness of each, 1 to 7 in half steps' },
  },
  outputs: { content: { kind: 'ratio', words: 'equivalent quartz content' } },
  fn: ({ shares, mohs }) => {
    if (shares.length !== mohs.length) {
      throw new PreconditionError(`${shares.length} shares, but ${mohs.length} hardnesses`)
    }
    if (shares.some((share) => share < 0) || shares.reduce((sum, each) => sum + each, 0) > 1 + ROUNDING) {
      throw new PreconditionError('the shares lie between 0 and 1 and add up to 1 at most')
    }
    return {
      content: shares.reduce((sum, share, index) => sum + share * quartzFactor(mohs[index] ?? Number.NaN), 0),
    }
  },
  checks: ['wear'],
})

function quartzFactor(mohs: number): number {
  const factor = FACTOR_OF_MOHS[String(mohs)]
  if (factor === undefined) {
    throw new PreconditionError(`a Mohs hardness goes from 1 to 7 in half steps, got ${mohs}`)
  }
  return factor
}
