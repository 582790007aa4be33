import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'

/** Thickness as struck, in metres. */
const COIN_M = { cent: 0.00152, nickel: 0.00195, dime: 0.00135, quarter: 0.00175 } as const
const COINS = ['cent', 'nickel', 'dime', 'quarter'] as const

/** A gap read with coins where no feeler gauge is at hand. A worn coin is thinner; the gap is then smaller than it says. */
export const coinFeeler = relation({
  id: 'coin-feeler',
  title: 'A gap read with coins',
  formula: 'g = n t',
  sources: ['UsMintCoins'],
  inputs: {
    coin: { choices: COINS, words: 'coin of the United States', default: 'quarter' },
    count: {
      kind: 'count',
      words: 'coins that just fit',
      range: { min: 1, max: 4, hardMin: 1, hardMax: 20 },
    },
  },
  outputs: { gap: { kind: 'movement', words: 'gap' } },
  fn: ({ coin, count }) => {
    const thicknessM = COINS.includes(coin) ? COIN_M[coin] : undefined
    if (thicknessM === undefined) throw new PreconditionError(`no coin of that name: ${coin}`)
    return { gapM: thicknessM * count }
  },
  checks: ['wear'],
})
