import { coinFeeler } from '../../shared/core/wear/coin-feeler.ts'

const COINS = {
  cent: 'cent',
  cents: 'cent',
  penny: 'cent',
  pennies: 'cent',
  nickel: 'nickel',
  nickels: 'nickel',
  dime: 'dime',
  dimes: 'dime',
  quarter: 'quarter',
  quarters: 'quarter',
} as const
const isCoin = (word: string): word is keyof typeof COINS => Object.hasOwn(COINS, word)

/** "2 quarters" as a gap; null for what is no coin. */
export function gapOfCoins(text: string): number | null {
  const found = /^(\d{1,2})?\s*([a-z]+)$/i.exec(text.trim())
  const word = found?.[2]?.toLowerCase() ?? ''
  if (!isCoin(word)) return null
  const count = Number(found?.[1] ?? 1)
  return count >= 1 && count <= 20 ? coinFeeler.fn({ coin: COINS[word], count }).gapM : null
}
