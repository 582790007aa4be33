import { describe, expect, test } from 'vitest'
import { learnWearRate, useToLimitS } from '../../../shared/core/wear/wear-increments.ts'

const IS_SLOW = process.env.UNDERLANE_SLOW === '1'
const TOOLS = IS_SLOW ? 20_000 : 1500
/** Of the nominal 80 % band: 78 to 90; a smaller fleet tells it less sharply. */
const [LEAST, MOST] = IS_SLOW ? [0.78, 0.9] : [0.755, 0.925]
const HOUR = 3600

const MEAN_RATE = 1e-5 / HOUR
const TOOL_SPREAD = 0.4
const BORE_SPREAD = 0.3
const ERROR_M = 0.00003
const LIMIT_M = 0.0016
const READ_EVERY_H = 30
/** Equivalent hours, oil and air counted in: what the worked example of the model has too. */
const BORE_H = 10

/** mulberry32: seeded and small. */
function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}
const random = seeded(20261125)
const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
const SIGMA = Math.sqrt(Math.log(1 + TOOL_SPREAD ** 2))

/** One invented tool: worn depth after each bore, to the bore that reaches the limit. */
function wornAfterBores(): readonly number[] {
  const rate = MEAN_RATE * Math.exp(SIGMA * normal() - SIGMA ** 2 / 2)
  const worn = [0]
  for (let bore = 0; bore < 2000; bore++) {
    const last = worn.at(-1) ?? 0
    if (last >= LIMIT_M) break
    worn.push(last + Math.max(0, rate * BORE_H * HOUR * (1 + BORE_SPREAD * normal())))
  }
  return worn
}

/** Whether the band holds the true use left after so many readings; null when the part did not live to the last one. */
function holds(readings: number): boolean | null {
  const worn = wornAfterBores()
  const perReading = READ_EVERY_H / BORE_H
  const read = Array.from({ length: readings + 1 }, (_, at) => worn[at * perReading])
  const seen: number[] = []
  for (const [at, wornM] of read.entries()) {
    if (wornM === undefined || wornM >= LIMIT_M) return null
    seen.push(at === 0 ? 0 : wornM + ERROR_M * normal())
  }
  const intervals = seen
    .slice(1)
    .map((wornM, at) => ({ useS: READ_EVERY_H * HOUR, wornM: wornM - (seen[at] ?? 0) }))
  const spread = Math.sqrt(0.15)
  const known = learnWearRate({ rateMPerS: MEAN_RATE, weightS: 10 * HOUR, spread }, intervals)
  const left = LIMIT_M - (seen.at(-1) ?? 0)
  const before = worn[worn.length - 2] ?? 0
  const after = worn.at(-1) ?? 0
  const share = after > before ? (LIMIT_M - before) / (after - before) : 1
  const trueS = (worn.length - 2 - readings * perReading + share) * BORE_H * HOUR
  const low = useToLimitS(known, left, 0.1)
  const high = useToLimitS(known, left, 0.9)
  return (low ?? Number.POSITIVE_INFINITY) <= trueS && trueS <= (high ?? Number.POSITIVE_INFINITY)
}

describe('an invented fleet: the band of one in ten to nine in ten', () => {
  test.each([0, 1, 2, 3, 4, 6])('after %d readings holds 78 to 90 % of what comes', (readings) => {
    const found: boolean[] = []
    for (let tries = 0; tries < 3 * TOOLS && found.length < TOOLS; tries++) {
      const inside = holds(readings)
      if (inside !== null) found.push(inside)
    }
    const share = found.filter((inside) => inside).length / found.length
    expect(share).toBeGreaterThan(LEAST)
    expect(share).toBeLessThan(MOST)
  })
})
