import '../../shared/text/spanish.ts'
import { describe, expect, test } from 'vitest'
import { hoseCurves, marginOverSites, supplyAndDemand } from '../../shared/core/plan/air-curves.ts'
import { hosePicture, marginPicture, supplyPicture } from '../../shared/drawing/air-pictures.ts'
import type { SvgNode } from '../../shared/drawing/svg-tree.ts'
import type { Say } from '../../shared/text/language.ts'
import { demoDocument, inputOf, planOf } from '../support/crossings.ts'
import { wordsOf } from './drawn.ts'

const FILE = {
  ...demoDocument('firm-clay-service'),
  tool: { diameter: '4 in', airDemand: '120 cfm', ratedPressure: '90 psi' },
  air: {
    compressor: { freeAirDelivery: '185 cfm', pressure: '100 psi' },
    hoses: [{ bore: '3/4 in', length: '100 ft' }],
  },
}
const input = inputOf(FILE)
const SAYS: readonly Say[] = [
  { lang: 'en', system: 'us' },
  { lang: 'es', system: 'si' },
]

describe('what the pictures show', () => {
  test('supply falls, demand rises, and they meet where the plan says the tool runs', () => {
    const { supply, demand, meet } = supplyAndDemand(input)
    const { air } = planOf(FILE)
    expect(meet?.gaugePa).toBe(air.toolGaugePa)
    for (const [one, two] of supply.slice(1).map((each, at) => [supply[at], each] as const)) {
      expect(two.gaugePa).toBeLessThanOrEqual(one?.gaugePa ?? 0)
    }
    expect(demand.at(-1)?.flowM3PerS).toBeGreaterThan(demand[0]?.flowM3PerS ?? 1)
  })

  test('the margin falls with altitude and with warmth', () => {
    const lines = marginOverSites(input)
    for (const { points } of lines) {
      const margins = points.map((each) => each.marginFraction ?? 0)
      expect(margins).toEqual([...margins].sort((a, b) => b - a))
    }
    const atSea = lines.map(({ points }) => points[0]?.marginFraction ?? 0)
    expect(atSea).toEqual([...atSea].sort((a, b) => b - a))
  })

  test('every hose loses with length, gains with bore, and lies in its band', () => {
    const curves = hoseCurves(input)
    expect(curves.filter((each) => each.isOurs)).toHaveLength(1)
    for (const { points } of curves) {
      for (const { lowGaugePa, likelyGaugePa, highGaugePa } of points) {
        expect(lowGaugePa).toBeLessThanOrEqual(likelyGaugePa)
        expect(likelyGaugePa).toBeLessThanOrEqual(highGaugePa)
      }
    }
    const ends = curves.map(({ points }) => points.at(-1)?.likelyGaugePa ?? 0)
    expect(ends).toEqual([...ends].sort((a, b) => a - b))
  })
})

describe.each(SAYS)('the pictures in $lang, $system', (say) => {
  const pictures: readonly (readonly [string, (widthPx: number) => SvgNode])[] = [
    ['supply', (widthPx) => supplyPicture(supplyAndDemand(input), { say, widthPx, id: 'a' })],
    ['margin', (widthPx) => marginPicture(marginOverSites(input), { say, widthPx, id: 'b' })],
    [
      'hose',
      (widthPx) => {
        const [curve] = hoseCurves(input)
        if (curve === undefined) throw new Error('no hose')
        return hosePicture(curve, 7e5, { say, widthPx, id: 'c' })
      },
    ],
  ]
  test.each(pictures)('%s keeps its words inside, on a narrow screen too', (_name, draw) => {
    for (const widthPx of [330, 640]) {
      const words = wordsOf(draw(widthPx))
      expect(words.length).toBeGreaterThan(6)
      for (const each of words) {
        expect([each.text, each.left >= -1, each.right <= widthPx + 1]).toEqual([each.text, true, true])
      }
    }
  })

  test.each(pictures)('no words of %s stand on others', (_name, draw) => {
    for (const widthPx of [330, 640]) {
      const words = wordsOf(draw(widthPx))
      const faults = words.flatMap((one, at) =>
        words
          .slice(at + 1)
          .filter(
            (two) =>
              Math.min(one.right, two.right) - Math.max(one.left, two.left) > 2 &&
              Math.min(one.bottom, two.bottom) - Math.max(one.top, two.top) > 2,
          )
          .map((two) => [one.text, two.text]),
      )
      expect(faults).toEqual([])
    }
  })
})
