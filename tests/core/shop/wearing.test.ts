import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dueBeforeBore, orderBy } from '../../../shared/core/shop/due-before-bore.ts'
import { type BoreUse, equivalentS, totalUseS } from '../../../shared/core/shop/exposure.ts'
import {
  forecastByDrift,
  forecastByLives,
  forecastByWear,
  type PartForecast,
} from '../../../shared/core/shop/forecast.ts'
import {
  boresOfOwnPart,
  boresOfPiece,
  type Piece,
  type ToolBore,
} from '../../../shared/core/shop/part-history.ts'
import { slowAdvance } from '../../../shared/core/shop/slow-advance.ts'
import { type Inspection, type PartSpec, WEAR_DRIVERS } from '../../../shared/core/shop/template.ts'
import { combined, wearIntervals, wearLooks } from '../../../shared/core/shop/wear-readings.ts'
import { chanceLimitPassed, learnWearRate, useToLimitS } from '../../../shared/core/wear/wear-increments.ts'

const HOUR = 3600
const USUAL: BoreUse = {
  lengthM: 12,
  hammerS: HOUR,
  blowRateHz: null,
  strokeM: null,
  pressureRatio: null,
  abrasivity: null,
  oil: null,
  air: null,
}

describe('use on the clock of each part', () => {
  test('an hour in usual service is an hour for all that goes by time', () => {
    for (const driver of ['sliding', 'valve', 'blows', 'hose'] as const) {
      expect(equivalentS(driver, USUAL)).toBeCloseTo(HOUR, 9)
    }
    expect(equivalentS('ground', USUAL)).toBeCloseTo(12 / 0.01016, 9)
  })

  test('sliding is blows times twice the stroke: 6 a second at 150 mm make 6480 m an hour', () => {
    expect(HOUR * 6 * 2 * 0.15).toBeCloseTo(6480, 9)
    const longer = { ...USUAL, strokeM: 0.3, blowRateHz: 3 }
    expect(equivalentS('sliding', longer)).toBeCloseTo(HOUR, 9)
    expect(equivalentS('sliding', { ...longer, oil: 'none', air: 'wet', pressureRatio: 1.1 })).toBeCloseTo(
      HOUR * 50 * 2.5 * 1.1,
      6,
    )
  })

  test('worse ground, oil and air never count for less, and ground wears what touches it only', () => {
    for (const driver of WEAR_DRIVERS) {
      const rising = [1, 2, 3, 4, 5, 6].map((abrasivity) => equivalentS(driver, { ...USUAL, abrasivity }))
      expect([...rising].sort((a, b) => a - b)).toEqual(rising)
      const oils = (['good', 'poor', 'none'] as const).map((oil) => equivalentS(driver, { ...USUAL, oil }))
      expect([...oils].sort((a, b) => a - b)).toEqual(oils)
      const isTouched = driver === 'ground' || driver === 'hose'
      expect(rising[0] === rising[5]).toBe(!isTouched)
    }
  })
})

describe('swapping', () => {
  const day = (n: number): string => `2026-03-${String(n).padStart(2, '0')}`
  test('no hour is lost and none counted twice, however pieces go round', () => {
    const bores = fc.array(
      fc.record({ tool: fc.constantFrom('a', 'b'), on: fc.integer({ min: 1, max: 28 }) }),
      { maxLength: 30 },
    )
    // Each piece sits for a run of days in one tool after another; no two at once in one tool.
    const changes = fc.array(fc.integer({ min: 1, max: 28 }), { minLength: 1, maxLength: 5 })
    fc.assert(
      fc.property(bores, changes, (drawn, days) => {
        const all = drawn.map(
          ({ tool, on }, place): ToolBore => ({ ...USUAL, id: String(place), tool, on: day(on) }),
        )
        const steps = [...new Set(days)].sort((a, b) => a - b)
        const piece = (id: string, odd: number): Piece => ({
          id,
          name: id,
          key: 'rings',
          tool: null,
          usedBeforeS: 0,
          fitted: steps.map((from, place) => ({
            tool: (place + odd) % 2 === 0 ? 'a' : 'b',
            on: day(from),
            off: steps[place + 1] === undefined ? null : day(steps[place + 1] ?? 0),
          })),
        })
        const pieces = [piece('one', 0), piece('two', 1)]
        const inPieces = pieces.flatMap((each) => boresOfPiece(each, all))
        const own = ['a', 'b'].flatMap((tool) => boresOfOwnPart(tool, 'rings', all, pieces))
        expect([...inPieces, ...own].map(({ id }) => id).sort()).toEqual(all.map(({ id }) => id).sort())
        expect(totalUseS('sliding', [...inPieces, ...own])).toBeCloseTo(totalUseS('sliding', all), 3)
      }),
    )
  })

  test('a log that comes in twice is bored once', () => {
    const bore: ToolBore = { ...USUAL, id: 'x', tool: 'a', on: day(3) }
    expect(boresOfOwnPart('a', 'rings', [bore, bore], [])).toHaveLength(1)
  })
})

const ring: PartSpec = {
  key: 'rings',
  name: null,
  group: 'seals',
  driver: 'sliding',
  torque: null,
  leadDays: 14,
  measures: [
    { key: 'end-gap', measure: 'end-gap', nominalM: 0.0005, limitM: 0.0035, errorM: 0.00005 },
    { key: 'stands-out', measure: 'stands-out', nominalM: 0.001, limitM: 0, errorM: 0.0001 },
  ],
}
const sheet = (on: string, gapM: number, outM: number | null): Inspection => ({
  id: on,
  tool: 'a',
  on,
  by: 'Ada',
  tiltBefore: null,
  tiltAfter: null,
  stripped: true,
  replaced: [],
  readings: [
    { part: 'rings', key: 'end-gap', valueM: gapM, grade: null },
    ...(outM === null ? [] : [{ part: 'rings', key: 'stands-out', valueM: outM, grade: null }]),
  ],
})

describe('readings of a ring', () => {
  test('gap and stand-out are put together by what each is worth', () => {
    // Worked by hand: weights 1/σ², 1/0.01² and 1/0.03² are nine to one.
    const found = combined([
      { valueM: 0.1, sdM: 0.01 },
      { valueM: 0.2, sdM: 0.03 },
    ])
    expect(found?.valueM).toBeCloseTo(0.11, 12)
    expect(found?.sdM).toBeCloseTo(0.03 / Math.sqrt(10), 12)
    expect(combined([])).toBeNull()
  })

  test('a gap 2π wider is a ring 1 thinner, and the gap weighs far more', () => {
    const looks = wearLooks(ring, [sheet('2026-03-10', 0.0005 + 2 * Math.PI * 0.0001, 0.00085)], '2026-03-01')
    expect(looks).toHaveLength(2)
    const share = (0.0001 / 2) ** 2 / (0.0001 / 2) ** 2 / (1 + (1 / (4 * Math.PI)) ** 2)
    expect(looks[1]?.wornM.valueM).toBeCloseTo(share * 0.0001 + (1 - share) * 0.00015, 9)
    // Gap says 0.10 mm, straight edge 0.15 mm: the bore it sits in shows no wear beyond the ring.
    expect(looks[1]?.boreWornM).toBeCloseTo(-0.00005, 12)
    // The gap leaves less than the groove does.
    expect(looks[1]?.leftM).toBeCloseTo(0.003 / (2 * Math.PI) - 0.0001, 12)
  })

  test('the same sheet in twice makes no interval of its own', () => {
    const one = sheet('2026-03-10', 0.001, null)
    const up = (on: string) => (on === '2026-03-01' ? 0 : 20 * HOUR)
    const once = wearIntervals(wearLooks(ring, [one], '2026-03-01'), up)
    expect(once).toHaveLength(1)
    expect(wearIntervals(wearLooks(ring, [one, one], '2026-03-01'), up)).toEqual(once)
  })
})

const inOrder = ({ p10S, p50S, p90S }: PartForecast): boolean =>
  (p10S ?? 0) <= (p50S ?? Number.POSITIVE_INFINITY) && (p50S ?? 0) <= (p90S ?? Number.POSITIVE_INFINITY)

describe('a forecast', () => {
  test('more wear never lengthens life', () => {
    const micrometres = fc.integer({ min: 1, max: 900 }).map((each) => each * 1e-6)
    fc.assert(
      fc.property(micrometres, micrometres, fc.integer({ min: 1, max: 80 }), (worn, more, hours) => {
        const limit = 0.002
        const at = (wornM: number) =>
          forecastByWear('sliding', 0.001, limit - wornM, [{ useS: hours * HOUR, wornM }])
        const less = at(worn)
        const greater = at(worn + more)
        expect(inOrder(less)).toBe(true)
        expect(greater.p50S ?? 0).toBeLessThanOrEqual(less.p50S ?? Number.POSITIVE_INFINITY)
        // And the nearer the limit with the same rate, the shorter at every level.
        const nearer = forecastByWear('sliding', 0.001, (limit - worn) / 2, [
          { useS: hours * HOUR, wornM: worn },
        ])
        for (const level of ['p10S', 'p50S', 'p90S'] as const) {
          expect(nearer[level] ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(
            less[level] ?? Number.POSITIVE_INFINITY,
          )
        }
      }),
    )
  })

  test('with no life ended there is no bound yet; with few the shape is given; age shortens what is left', () => {
    expect(forecastByLives({ endedS: [], runningS: [100] }, 10)).toMatchObject({ p50S: null, p90S: null })
    // Weibayes of the NIST data with shape 2 is 580.7730; its median when new is that × √ln 2.
    const ended = [54, 187, 216, 240]
    const few = forecastByLives({ endedS: ended, runningS: [] }, 0)
    const scale = Math.sqrt(ended.reduce((sum, each) => sum + each ** 2, 0) / ended.length)
    expect(few.p50S).toBeCloseTo(scale * Math.sqrt(Math.LN2), 6)
    const aged = forecastByLives({ endedS: ended, runningS: [] }, 100)
    expect(aged.p50S ?? 0).toBeLessThan(few.p50S ?? 0)
    expect(aged.chanceAfter?.(aged.p50S ?? 0)).toBeCloseTo(0.5, 9)
  })

  test('a length drifts to the limit it drifts towards; without a drift there is no bound', () => {
    const short = forecastByDrift(0.2, 0.0015875, [
      { useS: 0, valueM: 0.2 },
      { useS: 10 * HOUR, valueM: 0.1996 },
      { useS: 20 * HOUR, valueM: 0.19925 },
      { useS: 30 * HOUR, valueM: 0.1988 },
    ])
    expect(short.p50S ?? 0).toBeGreaterThan(5 * HOUR)
    expect(short.p50S ?? 0).toBeLessThan(15 * HOUR)
    expect(inOrder(short)).toBe(true)
    const still = [0.2, 0.2001, 0.1999, 0.2].map((valueM, place) => ({ useS: place * 10 * HOUR, valueM }))
    expect(forecastByDrift(0.2, 0.0015875, still)).toMatchObject({ p50S: null, p90S: null })
    expect(forecastByDrift(0.2, 0.0015875, still.slice(0, 2)).p50S).toBeNull()
  })
})

describe('before which bore', () => {
  // The worked example of the wear model: 12, 9, 15, 8 and 11 hours to come.
  const known = learnWearRate({ rateMPerS: 1e-5 / HOUR, weightS: 10 * HOUR, spread: Math.sqrt(0.15) }, [
    { useS: 20 * HOUR, wornM: 0.00025 },
    { useS: 35 * HOUR, wornM: 0.00041 },
    { useS: 25 * HOUR, wornM: 0.00033 },
  ])
  const leftM = 0.00061
  const forecast: PartForecast = {
    by: 'wear',
    p10S: null,
    p50S: useToLimitS(known, leftM, 0.5),
    p90S: null,
    count: 3,
    chanceAfter: (useS) => chanceLimitPassed(known, leftM, useS),
  }
  const hours = [12, 9, 15, 8, 11].map((each) => each * HOUR)

  test('the worked example is serviced before the fourth, at usual cost ratios', () => {
    for (const costRatio of [5, 10]) {
      const due = dueBeforeBore(forecast, hours, costRatio)
      expect(due?.bores.map(({ byEnd }) => Number(byEnd.toFixed(3)))).toEqual([0, 0, 0.01, 0.151, 0.745])
      expect(due?.serviceBefore).toBe(3)
    }
  })

  test('costlier failures bring it forward, never back; a failure that costs no more brings none', () => {
    const places = [1.5, 3, 10, 50, 1e4].map(
      (ratio) => dueBeforeBore(forecast, hours, ratio)?.serviceBefore ?? 9,
    )
    expect([...places].sort((a, b) => b - a)).toEqual(places)
    expect(dueBeforeBore(forecast, hours, 1)?.serviceBefore).toBeNull()
  })

  test('a forecast without chances says nothing', () => {
    expect(dueBeforeBore({ ...forecast, chanceAfter: null }, hours)).toBeNull()
  })

  test('the day to order by, over the end of a month', () => {
    expect(orderBy('2026-03-02', 14)).toBe('2026-02-16')
    expect(orderBy('soon', 14)).toBeNull()
  })
})

describe('slow advance', () => {
  const seen = (share: number, pressureRatio: number | null = 1) => ({
    advanceMPerS: share * 0.01,
    expectedMPerS: 0.01,
    pressureRatio,
  })
  test('three slow ones in a row at normal pressure in known ground are worth a look', () => {
    expect(slowAdvance([seen(1), seen(0.5), seen(0.5), seen(0.6)])?.share).toBeCloseTo(1.6 / 3, 12)
  })
  test('one stone, low air, an unread gauge or unknown ground say nothing', () => {
    expect(slowAdvance([seen(0.5), seen(0.9), seen(0.5)])).toBeNull()
    expect(slowAdvance([seen(0.5, 0.8), seen(0.5, 0.8), seen(0.5, 0.8)])).toBeNull()
    expect(slowAdvance([seen(0.5, null), seen(0.5), seen(0.5)])).toBeNull()
    expect(slowAdvance([seen(0.5), seen(0.5)])).toBeNull()
  })
})
