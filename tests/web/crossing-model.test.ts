import { effect } from '@preact/signals'
import { describe, expect, test } from 'vitest'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import { createCrossingModel } from '../../web/state/crossing-model.ts'

const atOnce = { soon: (run: () => void) => run() }

/** Keeps the last job for the test to run, as a screen would with its next frame. */
function frames() {
  const jobs: (() => void)[] = []
  return {
    soon: (run: () => void) => void jobs.push(run),
    draw: () => {
      for (const run of jobs.splice(0)) run()
    },
  }
}

describe('the model of a crossing', () => {
  test('answers with the very plan the engine makes of the file', () => {
    const model = createCrossingModel(FIRST_PRESET, atOnce)
    const input = parseCrossing(FIRST_PRESET)
    if (!input.ok || model.answers.value.state !== 'current') throw new Error('not planned')
    expect(planCrossing(input.value)).toEqual({ ok: true, value: model.answers.value.plan })
  })

  test('works a burst of changes out once, on the next frame', () => {
    const { soon, draw } = frames()
    const model = createCrossingModel(FIRST_PRESET, { soon })
    let plans = 0
    const stop = effect(() => {
      plans += model.answers.value.state === 'current' ? 1 : 0
    })
    for (const name of ['a', 'ab', 'abc']) model.set('name', name)
    expect(plans).toBe(1)
    draw()
    expect(plans).toBe(2)
    stop()
  })

  test('keeps the last good answers beside a refusal, and the text as it was typed', () => {
    const model = createCrossingModel(FIRST_PRESET, atOnce)
    const before = model.answers.value
    model.set('line.length', '28 bananas')
    const after = model.answers.value
    if (before.state !== 'current' || after.state !== 'former') throw new Error('wrong states')
    expect(after.plan).toBe(before.plan)
    expect(after.issues.map((issue) => issue.path)).toEqual(['line.length'])
    expect(model.document.value).toMatchObject({ line: { length: '28 bananas' } })
    model.set('line.length', '28 ft')
    expect(model.answers.value.state).toBe('current')
  })

  test('a field nobody has filled in is silent; one that was emptied says so', () => {
    const model = createCrossingModel(FIRST_PRESET, atOnce)
    expect(model.answers.value.state).toBe('current')
    model.set('utilities', [{}])
    expect(model.answers.value.state).toBe('former')
    expect(model.issues.value).toEqual([])
    model.set('utilities.0.kind', 'gas')
    model.set('utilities.0.kind', undefined)
    expect(model.issues.value.map(({ path, code }) => [path, code])).toEqual([
      ['utilities.0.kind', 'required'],
    ])
    model.set('utilities', [{}, {}])
    expect(model.issues.value).toEqual([])
    model.set('utilities', undefined)
    model.set('tool.diameter', undefined)
    expect(model.issues.value.map(({ path }) => path)).toEqual(['tool.diameter'])
  })

  test('another crossing opened does not inherit the answers of the one before', () => {
    const model = createCrossingModel(FIRST_PRESET, atOnce)
    expect(model.answers.value.state).toBe('current')
    model.open({ name: 'Only a name' })
    expect(model.answers.value.state).toBe('none')
  })

  test('any JSON object is opened and refused in words, never thrown at', () => {
    const model = createCrossingModel({}, atOnce)
    for (const document of [{ line: 7 }, { air: null }, { pipes: [[]] }, { ground: 'clay', tool: [1] }]) {
      model.open(document)
      expect(model.answers.value.state).toBe('none')
      expect(model.issues.value.length).toBeGreaterThan(0)
    }
  })
})
