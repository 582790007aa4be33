import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Kind } from '../../shared/core/kinds.ts'
import { KINDS } from '../../shared/core/kinds.ts'
import { formatMoney } from '../../shared/quantities/format-money.ts'
import { formatProbability } from '../../shared/quantities/format-probability.ts'
import type { UnitSystem } from '../../shared/quantities/format-quantity.ts'
import {
  formatQuantity,
  NO_NUMBER,
  shownQuantity,
  significant,
} from '../../shared/quantities/format-quantity.ts'
import { parseQuantity } from '../../shared/quantities/parse-quantity.ts'

const kinds = Object.keys(KINDS) as Kind[]
const SEED = 20261124

/** Sizes met on a job, SI, smallest and largest; the property runs over the decades between them. */
function span(kind: Kind): readonly [number, number] {
  if (kind === 'temperature') return [200, 400]
  return ['m', '1'].includes(KINDS[kind].unit) ? [1e-3, 3e3] : [1e-6, 1e8]
}

describe('what is shown reads back as what was meant', () => {
  it.each(kinds.flatMap((kind) => (['us', 'si'] as const).map((system) => [kind, system] as const)))(
    '%s in %s',
    (kind, system) => {
      const [low, high] = span(kind)
      const decade = fc.double({ min: Math.log10(low), max: Math.log10(high), noNaN: true })
      fc.assert(
        fc.property(decade, fc.boolean(), (exponent, negative) => {
          const value = 10 ** exponent * (negative && kind !== 'temperature' ? -1 : 1)
          const { text, withinSi } = shownQuantity(value, kind, system)
          const back = parseQuantity(text, kind)
          if (!back.ok) throw new Error(`${text}: ${JSON.stringify(back.issue)}`)
          expect(Math.abs(back.valueSi - value), text).toBeLessThanOrEqual(
            withinSi * (1 + 1e-9) + Math.abs(value) * 1e-12,
          )
        }),
        { seed: SEED, numRuns: 300 },
      )
    },
  )

  it.each(kinds)('%s: zero and no number at all', (kind) => {
    const zero = parseQuantity(formatQuantity(0, kind, 'us'), kind)
    if (kind !== 'temperature') expect(zero).toEqual({ ok: true, valueSi: 0 })
    for (const none of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(formatQuantity(none, kind, 'si')).toBe(NO_NUMBER)
    }
  })
})

describe('digits for people', () => {
  const rows: readonly (readonly [number, Kind, UnitSystem, string])[] = [
    [12.8016, 'length', 'us', '42 ft'],
    [1.40208, 'length', 'us', '4 ft 7-1/4 in'],
    [0.2286, 'depth', 'us', '9 in'],
    [12.8016, 'length', 'si', '12.80 m'],
    [0.0635, 'diameter', 'us', '2-1/2 in'],
    [0.028575, 'diameter', 'us', '1-1/8 in'],
    [0.033401, 'diameter', 'us', '1.315 in'],
    [0.032, 'diameter', 'si', '32 mm'],
    [0.0635, 'diameter', 'si', '63.5 mm'],
    [0.003, 'movement', 'si', '3.0 mm'],
    [0.006, 'movement', 'us', '0.24 in'],
    [1e-5, 'movement', 'us', '0.00039 in'],
    [1e-5, 'movement', 'si', '0.01 mm'],
    [0, 'movement', 'us', '0.00 in'],
    [365.76, 'altitude', 'us', '1200 ft'],
    [45, 'duration', 'us', '45 s'],
    [35 * 60 + 20, 'duration', 'si', '35 min'],
    [11_330, 'duration', 'us', '3 h 10 min'],
    [7199, 'duration', 'us', '2 h'],
    [0.0127, 'speed', 'us', '2.5 ft/min'],
    [0.01016, 'speed', 'us', '2.0 ft/min'],
    [0.0127, 'speed', 'si', '0.76 m/min'],
    [689_475.73, 'gaugePressure', 'us', '100 psi'],
    [700_000, 'gaugePressure', 'si', '7.0 bar'],
    [101_325, 'absolutePressure', 'us', '15 psia'],
    [50_000, 'stress', 'us', '1040 psf'],
    [50_000, 'stress', 'si', '50 kPa'],
    [0.087310277, 'volumeFlow', 'us', '185 cfm'],
    [0.087310277, 'volumeFlow', 'si', '5.24 m³/min'],
    [406.745, 'energy', 'us', '300 ft-lb'],
    [4448.22, 'force', 'us', '1000 lbf'],
    [4448.22, 'force', 'si', '4.45 kN'],
    [302.594, 'temperature', 'us', '85 °F'],
    [281.15, 'temperature', 'si', '8 °C'],
    [10, 'temperatureDifference', 'us', '18 °F'],
    [Math.PI / 4, 'angle', 'us', '45°'],
    [0.004167, 'angle', 'si', '4.2 mrad'],
    [0.0051, 'drift', 'us', '5.1 mrad/√m'],
    [6.6666667, 'frequency', 'us', '400 blows/min'],
    [8.017, 'frequency', 'si', '480 blows/min'],
    [0, 'length', 'us', '0 ft'],
    [0, 'length', 'si', '0 m'],
    [1000, 'length', 'us', '3281 ft'],
    [1000, 'length', 'si', '1000 m'],
    [0.084328, 'diameter', 'us', '3.32 in'],
    [0, 'volumeFlow', 'us', '0 cfm'],
    [0, 'volumeFlow', 'si', '0 m³/min'],
    [2.8e-8, 'volumeFlow', 'us', '100 mL/h'],
    [0.01458, 'volumeFlow', 'us', '31 cfm'],
    [0.0005, 'volumeFlow', 'si', '30 L/min'],
    [0.25e-3, 'volume', 'us', '8.5 fl oz'],
    [0.007, 'volume', 'us', '1.8 gal'],
    [1.7, 'volume', 'us', '60 ft³'],
    [0.025, 'ratio', 'si', '0.025'],
    [9, 'count', 'us', '9'],
    [-1.5, 'temperatureDifference', 'si', '-2 K'],
  ]
  it.each(rows)('%d of %s in %s is %s', (value, kind, system, text) => {
    expect(formatQuantity(value, kind, system)).toBe(text)
  })

  it('writes in a unit that was asked for', () => {
    expect(formatQuantity(1.2, 'length', 'us', { unit: 'm', digits: 2 })).toBe('1.2 m')
    expect(formatQuantity(1.2, 'length', 'si', { unit: 'psi' })).toBe('1.20 m')
  })

  it('rounds to significant digits', () => {
    expect(significant(184.6, 2)).toBe(180)
    expect(significant(0, 2)).toBe(0)
  })
})

describe('chances', () => {
  it.each([
    [0, 'less than 1 in 1,000'],
    [0.0004, 'less than 1 in 1,000'],
    [0.001, 'less than 1 in 1,000'],
    [0.004, 'less than 1 %'],
    [0.05, '5 %'],
    [0.994, '99 %'],
    [0.9999, 'more than 99 %'],
    [1, '100 %'],
    [Number.NaN, null],
    [1.1, null],
  ])('%d is %s', (probability, text) => {
    expect(formatProbability(probability)).toBe(text)
  })
})

describe('money', () => {
  it.each([
    [184_250, 'USD', 500, '$1,845'],
    [184_250, 'USD', 1, '$1,842.50'],
    [123_456_700, 'GBP', 100, '£1,234,567'],
    [-5_000, 'EUR', 100, '-€50'],
    [5_000, 'JPY', 1, 'JPY 5,000'],
    [99_999, 'USD', 1, '$999.99'],
  ])('%d of %s by %d', (minorUnits, currency, step, text) => {
    expect(formatMoney(minorUnits, currency, step)).toBe(text)
  })
})
