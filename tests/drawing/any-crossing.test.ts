import fc from 'fast-check'
import { expect, test } from 'vitest'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import { EVIDENCE, OVER_KINDS, UTILITY_KINDS } from '../../shared/core/plan/crossing-input.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'
import { longSection } from '../../shared/drawing/long-section.ts'
import { allNodes } from '../../shared/drawing/svg-tree.ts'
import { BUSY, wordsOf } from './drawn.ts'

const metres = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((cm) => cm / 100)

const utility = fc.record({
  kind: fc.constantFrom(...UTILITY_KINDS),
  share: fc.integer({ min: 0, max: 100 }),
  depth: fc.option(metres(0, 3)),
  diameter: fc.option(metres(0.02, 1.2)),
  angle: fc.option(fc.integer({ min: 6, max: 174 })),
  evidence: fc.constantFrom(...EVIDENCE),
})
const crossing = fc.record({
  lengthM: metres(0.5, 120),
  launchM: metres(0.3, 4),
  receptionM: metres(0.3, 4),
  riseM: metres(-1, 1),
  launch: fc.constantFrom('pit', 'keyhole', 'bank', 'handhole', 'wall', 'inside'),
  reception: fc.constantFrom('pit', 'keyhole', 'bank', 'handhole', 'wall', 'inside'),
  over: fc.constantFrom(...OVER_KINDS),
  footingM: fc.option(metres(0.2, 4)),
  waterM: fc.option(metres(0, 6)),
  shots: fc.integer({ min: 1, max: 5 }),
  utilities: fc.array(utility, { maxLength: 12 }),
  widthPx: fc.constantFrom(320, 390, 800, 1200),
  sheet: fc.constantFrom('screen', 'screen', 'letter', 'a4'),
})

test('any crossing that can be planned can be drawn, with every number in its place and no words over words', () => {
  fc.assert(
    fc.property(crossing, (c) => {
      const input = parseCrossing({
        ...BUSY,
        line: { length: c.lengthM },
        depth: { launch: c.launchM, reception: c.receptionM, to: 'centre' },
        surface: [
          { station: 0, level: 10 },
          { station: c.lengthM, level: 10 + c.riseM },
        ],
        shots: Array.from({ length: c.shots }, (_, index) => ({ to: (c.lengthM * (index + 1)) / c.shots })),
        ends: {
          launch: { kind: c.launch, ...(c.footingM !== null && { footingDepth: c.footingM }) },
          reception: { kind: c.reception, ...(c.footingM !== null && { footingDepth: c.footingM }) },
        },
        over: [{ from: 0, to: c.lengthM / 2, kind: c.over }],
        ground: [{ word: 'firm clay', ...(c.waterM !== null && { waterTable: c.waterM }) }],
        utilities: c.utilities.map((u) => ({
          kind: u.kind,
          station: (c.lengthM * u.share) / 100,
          evidence: u.evidence,
          ...(u.depth !== null && { depth: u.depth, depthTo: 'top' }),
          ...(u.diameter !== null && { diameter: u.diameter }),
          ...(u.angle !== null && { crossingAngle: `${u.angle} deg` }),
        })),
        spread: { seed: 1, draws: 64 },
      })
      if (!input.ok) throw new Error(JSON.stringify(input.issues))
      const plan = planCrossing(input.value)
      if (!plan.ok) return
      const options = { system: 'si', lang: 'en', widthPx: c.widthPx, sheet: c.sheet } as const
      const { tree } = longSection(input.value, plan.value, options)
      const attributes = allNodes(tree)
        .map((node) => JSON.stringify(node.attributes))
        .join('')
      expect(attributes).not.toMatch(/NaN|Infinity|undefined|null/)
      const words = wordsOf(tree)
      const [, , width = 0, height = 0] = String(tree.attributes.viewBox).split(' ').map(Number)
      const outside = words.filter(
        (each) => each.left < -1 || each.right > width + 1 || each.bottom > height + 1,
      )
      expect(outside.map((each) => each.text)).toEqual([])
      expect(words.some((each) => each.text.includes('cover') || each.text === 'cover')).toBe(true)
      for (const [index, one] of words.entries())
        for (const two of words.slice(index + 1)) {
          const isOver =
            one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom
          expect([isOver, one.text, two.text]).toEqual([false, one.text, two.text])
        }
    }),
    { seed: 11, numRuns: 150 },
  )
})
