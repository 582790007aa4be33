import { describe, expect, test } from 'vitest'
import { questionOfReading, questionsOfDay } from '../../../shared/core/shop/inspection-questions.ts'
import { judgeMeasure } from '../../../shared/core/shop/judge-measure.ts'
import type { Inspection, MeasureSpec, Reading } from '../../../shared/core/shop/template.ts'
import { GRADED_MEASURES, isSized, MEASURES } from '../../../shared/core/shop/template.ts'
import { holdReasons, lastTilt, partStates } from '../../../shared/core/shop/tool-state.ts'
import { GENERIC_TOOL_TEMPLATE } from '../../../shared/tables/generic-tool-template.ts'

const spec = (measure: MeasureSpec['measure'], rest: Partial<MeasureSpec> = {}): MeasureSpec => ({
  key: measure,
  measure,
  nominalM: null,
  limitM: null,
  errorM: null,
  ...rest,
})
const value = (valueM: number): Reading => ({ part: 'p', key: 'k', valueM, grade: null })
const grade = (word: string): Reading => ({ part: 'p', key: 'k', valueM: null, grade: word })

describe('one measure', () => {
  test.each([
    ['a gap well inside', spec('end-gap', { nominalM: 0.0005, limitM: 0.003 }), 0.001, 'keep'],
    ['a gap near its limit', spec('end-gap', { nominalM: 0.0005, limitM: 0.003 }), 0.0027, 'watch'],
    ['a gap at its limit', spec('end-gap', { nominalM: 0.0005, limitM: 0.003 }), 0.003, 'replace'],
    ['a ring that stands out', spec('stands-out', { nominalM: 0.002 }), 0.0012, 'keep'],
    ['a ring flush with its groove', spec('stands-out', { nominalM: 0.002 }), 0, 'replace'],
    ['a ring below its groove, size when new unknown', spec('stands-out'), -0.0001, 'replace'],
    ['a valve 1/32 in short', spec('length', { nominalM: 0.2 }), 0.2 - 0.0254 / 32, 'keep'],
    ['a valve 1/16 in short', spec('length', { nominalM: 0.25 }), 0.25 - 0.0254 / 16 - 1e-9, 'replace'],
    ['a valve 1/16 in long', spec('length', { nominalM: 0.25 }), 0.25 + 0.0254 / 16 + 1e-9, 'replace'],
    ['a body worn to its least', spec('diameter', { nominalM: 0.076, limitM: 0.07 }), 0.0699, 'replace'],
  ])('%s', (_name, measure, reading, verdict) => {
    expect(judgeMeasure(measure, value(reading)).verdict).toBe(verdict)
  })

  test('without a limit nothing is judged, and that is said', () => {
    expect(judgeMeasure(spec('side-play'), value(0.001))).toMatchObject({ verdict: null, why: 'no-limit' })
    expect(judgeMeasure(spec('length'), value(0.2))).toMatchObject({ verdict: null, why: 'no-limit' })
    expect(judgeMeasure(spec('side-play'), null)).toMatchObject({ verdict: null, why: 'not-read' })
  })

  test('every graded measure runs from keep to replace, and a word it does not have says nothing', () => {
    for (const measure of MEASURES) {
      if (isSized(measure)) continue
      const grades = GRADED_MEASURES[measure]
      const verdicts = grades.map((word) => judgeMeasure(spec(measure), grade(word)).verdict)
      expect(verdicts[0]).toBe('keep')
      expect(verdicts.at(-1)).toBe('replace')
      expect(judgeMeasure(spec(measure), grade('fine')).verdict).toBeNull()
    }
  })

  test('more wear never gives a better verdict', () => {
    const order = ['keep', 'watch', 'replace']
    const gap = spec('end-gap', { nominalM: 0.0005, limitM: 0.003 })
    let worst = 0
    for (let step = 0; step <= 40; step++) {
      const found = judgeMeasure(gap, value(step * 0.0001)).verdict ?? 'keep'
      expect(order.indexOf(found)).toBeGreaterThanOrEqual(worst)
      worst = order.indexOf(found)
    }
  })
})

describe('what is asked', () => {
  const gap = spec('end-gap', { errorM: 0.00005 })
  test('a gap smaller than last time by more than its error', () => {
    expect(questionOfReading('p', gap, 0.00094, 0.001)?.code).toBe('below-last')
    expect(questionOfReading('p', gap, 0.00096, 0.001)).toBeNull()
    expect(questionOfReading('p', spec('stands-out', { errorM: 0.0001 }), 0.0012, 0.001)?.code).toBe(
      'below-last',
    )
  })
  test('a negative gap, with what it may have been; a ring may stand below its groove', () => {
    expect(questionOfReading('p', gap, -0.001, null)).toMatchObject({
      code: 'negative',
      candidatesM: [0.001],
    })
    expect(questionOfReading('p', spec('stands-out'), -0.0001, null)).toBeNull()
  })
  test('a factor of 25.4 from the last reading or from new, either way', () => {
    const found = questionOfReading('p', gap, 0.0254, 0.001)
    expect(found?.code).toBe('inches-for-millimetres')
    expect(found?.candidatesM[0]).toBeCloseTo(0.001, 12)
    const length = spec('length', { nominalM: 0.2 })
    expect(questionOfReading('p', length, 0.2 / 25.4, null)?.candidatesM[0]).toBeCloseTo(0.2, 12)
    expect(questionOfReading('p', length, 0.2, null)).toBeNull()
  })
  test('a day to come, and a day that has a sheet', () => {
    expect(questionsOfDay('2026-03-03', '2026-03-02', [])).toMatchObject([{ code: 'future-date' }])
    expect(questionsOfDay('2026-03-02', '2026-03-02', ['2026-03-02'])).toMatchObject([
      { code: 'same-day-again' },
    ])
    expect(questionsOfDay('2026-03-01', '2026-03-02', ['2026-02-02'])).toEqual([])
  })
})

describe('a tool', () => {
  const sheet = (on: string, rest: Partial<Inspection> = {}): Inspection => ({
    id: on,
    tool: 't',
    on,
    by: 'Ada',
    readings: [],
    tiltBefore: null,
    tiltAfter: null,
    stripped: false,
    replaced: [],
    ...rest,
  })
  const spent = [{ part: 'seals', key: 'seal', valueM: null, grade: 'spent' }]

  test('is held by a failed tilt test until one is passed', () => {
    const failed = sheet('2026-03-01', { tiltBefore: 'failed' })
    expect(holdReasons(GENERIC_TOOL_TEMPLATE, [failed])).toMatchObject([{ code: 'tilt-failed' }])
    const passed = sheet('2026-03-02', { tiltBefore: 'failed', tiltAfter: 'passed' })
    expect(holdReasons(GENERIC_TOOL_TEMPLATE, [passed, failed])).toEqual([])
    expect(lastTilt([passed, failed])).toEqual({ on: '2026-03-02', passed: true })
  })

  test('is held by a part to be replaced until it is', () => {
    const found = sheet('2026-03-01', { readings: spent, tiltAfter: 'passed' })
    expect(holdReasons(GENERIC_TOOL_TEMPLATE, [found])).toEqual([
      { code: 'replace', on: '2026-03-01', part: 'seals' },
    ])
    const mended = sheet('2026-03-02', { replaced: ['seals'] })
    expect(holdReasons(GENERIC_TOOL_TEMPLATE, [found, mended])).toEqual([])
    const atOnce = sheet('2026-03-01', { readings: spent, replaced: ['seals'] })
    expect(holdReasons(GENERIC_TOOL_TEMPLATE, [atOnce])).toEqual([])
  })

  test('the same sheet twice says the same', () => {
    const found = sheet('2026-03-01', { readings: spent })
    expect(partStates(GENERIC_TOOL_TEMPLATE, [found, found])).toEqual(
      partStates(GENERIC_TOOL_TEMPLATE, [found]),
    )
    expect(holdReasons(GENERIC_TOOL_TEMPLATE, [found, found])).toEqual(
      holdReasons(GENERIC_TOOL_TEMPLATE, [found]),
    )
  })
})
