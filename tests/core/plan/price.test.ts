import { describe, expect, test } from 'vitest'
import { DEMO_NAMES, planOfDemo } from '../../support/crossings.ts'

describe.each(DEMO_NAMES)('the price of %s', (name) => {
  const price = planOfDemo(name, { rates: 'example' }).price

  test('its lines add up to the likely price', () => {
    const sum = price?.lines.reduce((total, line) => total + line.minorUnits, 0) ?? Number.NaN
    // Each line is rounded to a cent, and there are at most a dozen.
    expect(Math.abs(sum - (price?.p50MinorUnits ?? 0))).toBeLessThanOrEqual(10)
  })

  test('likely ≤ 8 in 10 ≤ quoted, and the quote is a whole step', () => {
    expect(price?.p50MinorUnits).toBeLessThanOrEqual(price?.p80MinorUnits ?? 0)
    expect(price?.p80MinorUnits).toBeLessThanOrEqual(price?.quotedMinorUnits ?? 0)
    expect((price?.quotedMinorUnits ?? 1) % (price?.stepMinorUnits ?? 1)).toBe(0)
  })
})

test('what one in two bores costs shows up in the price: cobbles are dear', () => {
  const ground = (stones: string) =>
    planOfDemo('firm-clay-service', { ground: [{ word: 'firm clay', stones }] }).price
  expect(ground('cobbles')?.p50MinorUnits).toBeGreaterThan(1.2 * (ground('none')?.p50MinorUnits ?? 0))
})
