import '../../shared/text/spanish.ts'
import { describe, expect, test } from 'vitest'
import { drawingStyle } from '../../shared/drawing/drawing-style.ts'
import { pressureLadder } from '../../shared/drawing/pressure-ladder.ts'
import { standaloneSvg } from '../../shared/drawing/svg-text.ts'
import { DEMO_NAMES, planOfDemo } from '../support/crossings.ts'
import { numberOf, theOne, withClass, wordsOf } from './drawn.ts'

describe.each(DEMO_NAMES)('pressures of %s', (name) => {
  const { air } = planOfDemo(name)
  const tree = pressureLadder(air, { system: 'us', lang: 'en', widthPx: 360 })

  test('bars are as long as the pressures are high', () => {
    const widths = withClass(theOne(tree, 'rungs'), 'bar').map((bar) => numberOf(bar, 'width'))
    const pressures = [air.compressorGaugePa, ...air.ladder.map((step) => step.outletGaugePa)]
    expect(widths).toHaveLength(pressures.length)
    for (const [index, width] of widths.entries())
      expect(width / (widths[0] ?? 0)).toBeCloseTo((pressures[index] ?? 0) / air.compressorGaugePa, 2)
  })

  test('the verdict is in words', () => {
    expect(
      wordsOf(tree)
        .map((each) => each.text)
        .join('\n'),
    ).toMatch(/at the tool \d+ psi: (too low|weak|good|high)/)
  })

  test('words keep to the drawing and off each other', () => {
    const words = wordsOf(tree)
    for (const [index, one] of words.entries()) {
      expect([one.text, one.left >= 0, one.right <= 361]).toEqual([one.text, true, true])
      for (const two of words.slice(index + 1))
        expect(
          one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom,
        ).toBe(false)
    }
  })
})

test('a tool kept low or high is flagged, in both languages', () => {
  const { air } = planOfDemo('firm-clay-service')
  const low = pressureLadder(
    { ...air, flag: 'low', toolGaugePa: 400_000 },
    { system: 'si', lang: 'en', widthPx: 360 },
  )
  expect(withClass(low, 'bar-low')).toHaveLength(1)
  expect(standaloneSvg(low, drawingStyle('file'))).toContain('too low')
  const high = pressureLadder({ ...air, flag: 'high' }, { system: 'si', lang: 'es', widthPx: 360 })
  expect(withClass(high, 'bar-high')).toHaveLength(1)
})
