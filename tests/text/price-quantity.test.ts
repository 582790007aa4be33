import '../../shared/text/spanish.ts'
import { expect, test } from 'vitest'
import type { Say } from '../../shared/text/language.ts'
import { priceQuantity } from '../../shared/text/price-quantity.ts'
import { saidVolumePerLength } from '../../shared/text/say-quantity.ts'

const EN: Say = { lang: 'en', system: 'us' }
const ES: Say = { lang: 'es', system: 'si' }

test.each([
  [0.777, 'L', '0.21 gal', '0.78 L'],
  [6.9, 'L', '1.8 gal', '6.9 L'],
  [3.14, 'h', '3.1 h', '3.1 h'],
  [2, 'each', '2 each', '2 c/u'],
  [0.04, 'of cost', '4 % of cost', '4 % del costo'],
  [12.8016, 'm', '42 ft', '12.80 m'],
] as const)('%d %s of a price', (quantity, unit, en, es) => {
  expect(priceQuantity({ quantity, unit }, EN)).toBe(en)
  expect(priceQuantity({ quantity, unit }, ES)).toBe(es)
})

test('room to fill is told in what it is filled from', () => {
  expect(saidVolumePerLength(0.0012, EN)).toBe('0.097 gal per ft')
  expect(saidVolumePerLength(0.0012, ES)).toBe('1.2 L por metro')
})
