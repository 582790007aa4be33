import type { PriceLine } from '../core/plan/plan.ts'
import { formatQuantity } from '../quantities/format-quantity.ts'
import type { Say } from './language.ts'
import { knowsWord, planWord } from './plan-words.ts'
import { saidQuantity } from './say-quantity.ts'

const LITRES_PER_M3 = 1000

/** Fuel is bought by the gallon or the litre, however little. */
const fuel = (volumeM3: number, { system }: Say): string =>
  formatQuantity(volumeM3, 'volume', system, { unit: system === 'us' ? 'gal' : 'L', digits: 2 })

/** What a line of a price is counted in, as the trade writes it. */
export function priceQuantity({ quantity, unit }: Pick<PriceLine, 'quantity' | 'unit'>, say: Say): string {
  if (unit === 'm') return saidQuantity(quantity, 'length', say)
  if (unit === 'L') return fuel(quantity / LITRES_PER_M3, say)
  const word = planWord('priceUnit', unit, say)
  if (unit === 'h') return `${quantity.toFixed(1)} ${word}`
  if (unit === 'each') return `${saidQuantity(quantity, 'count', say)} ${word}`
  return `${Math.round(quantity * 100)} % ${word}`
}

/** The book of rates by its name: ours in the reader's language, the user's as they wrote it. */
export const priceBookName = (book: string, say: Say): string =>
  knowsWord('priceBook', book) ? planWord('priceBook', book, say) : book
