import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { UTILITY_KINDS } from '../../shared/core/plan/crossing-input.ts'
import { flagWidth, placeFlags } from '../../shared/drawing/flags.ts'
import { overlaps } from '../../shared/drawing/label.ts'
import { placeInLane } from '../../shared/drawing/lane.ts'
import { markColour, utilityGlyph } from '../../shared/drawing/utility-marks.ts'

const LINE_PX = 16

describe('flags', () => {
  const items = fc.array(
    fc.record({
      xPx: fc.integer({ min: 20, max: 330 }),
      priority: fc.integer({ min: 0, max: 2 }),
      lines: fc.constantFrom(
        ['gas', 'top 20 in'],
        ['electric', 'depth unknown'],
        ['water at 7 m', 'SHORT by 2 in', 'gap 3 in'],
      ),
      shortLines: fc.constant(['gas']),
    }),
    { maxLength: 14 },
  )

  test('no words over words, no pole through words, none out of range', () => {
    fc.assert(
      fc.property(items, (all) => {
        const flags = placeFlags(all, { left: 0, right: 360 })
        const boxes = flags.flatMap((flag, index) => {
          const x = all[index]?.xPx ?? 0
          const width = flagWidth(flag.lines)
          const left = flag.side === 'right' ? x + 4 : x - 4 - width
          return [{ index, x, left, right: left + width, top: -flag.top, bottom: -flag.foot }]
        })
        for (const one of boxes) {
          expect(one.left >= 0 && one.right <= 360).toBe(true)
          for (const two of boxes) {
            if (one.index === two.index) continue
            expect(overlaps(one, two)).toBe(false)
            expect(overlaps(one, { left: two.x - 1, right: two.x + 1, top: two.top, bottom: 0 })).toBe(false)
          }
        }
      }),
      { seed: 7, numRuns: 300 },
    )
  })

  test('where there is room every line of words stays', () => {
    const lines = ['gas', 'top 20 in', 'gap 3 in']
    const [flag] = placeFlags([{ xPx: 100, priority: 0, lines, shortLines: ['gas'] }], {
      left: 0,
      right: 360,
    })
    expect(flag).toEqual({ side: 'right', lines, foot: 0, top: 3 * LINE_PX })
  })
})

describe('a row of labels', () => {
  test('keeps the more important and leaves out what would lie over it', () => {
    const item = { centrePx: 50, widthPx: 40, slackPx: 4 }
    const range = { left: 0, right: 100 }
    expect(
      placeInLane(
        [
          { ...item, priority: 0 },
          { ...item, priority: 1 },
        ],
        range,
      ),
    ).toEqual([null, 50])
  })

  test('moves aside as far as it may', () => {
    const range = { left: 0, right: 200 }
    const [one, two] = placeInLane(
      [
        { centrePx: 100, widthPx: 40, priority: 1, slackPx: 0 },
        { centrePx: 110, widthPx: 40, priority: 0, slackPx: 80 },
      ],
      range,
    )
    expect(one).toBe(100)
    expect(Math.abs((two ?? 0) - 100)).toBeGreaterThanOrEqual(46)
  })
})

describe('marks', () => {
  test('each kind has a shape of its own, and a colour of the uniform code', () => {
    const shapes = UTILITY_KINDS.map((kind) => utilityGlyph(kind, 0, 0, 'apwa').children[0]?.attributes.d)
    expect(new Set(shapes).size).toBe(UTILITY_KINDS.length)
    // APWA uniform colour code.
    expect(UTILITY_KINDS.map((kind) => [kind, markColour(kind, 'apwa')])).toEqual([
      ['gas', 'yellow'],
      ['electric', 'red'],
      ['telecom', 'orange'],
      ['water', 'blue'],
      ['sewer', 'green'],
      ['storm', 'green'],
      ['reclaimed', 'purple'],
      ['irrigation', 'purple'],
      ['steam', 'yellow'],
      ['oil', 'yellow'],
      ['propane', 'yellow'],
      ['lighting', 'red'],
      ['septic', 'green'],
      ['other', 'grey'],
    ])
  })
})
