// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import '../support/late-parts.ts'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { Answers } from '../../web/crossings/answers/answers.tsx'
import { comparedFigures } from '../../web/crossings/answers/compared-figures.ts'
import { madeOfPrice } from '../../web/crossings/answers/made-of.ts'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import { type CrossingModel, createCrossingModel } from '../../web/state/crossing-model.ts'
import { chooseUnits } from '../../web/state/unit-choice.ts'

let model: CrossingModel
beforeEach(() => {
  chooseUnits('us')
  model = createCrossingModel(FIRST_PRESET, { soon: (run) => run() })
})
afterEach(cleanup)

function planNow(): Plan {
  if (model.answers.value.state !== 'current') throw new Error('not planned')
  return model.answers.value.plan
}

/** '3 h 10 min' or '13 min' in minutes. */
function minutes(text: string): number {
  const [, hours = '0', rest = '0'] = /(?:(\d+) h)? ?(?:(\d+) min)?/.exec(text) ?? []
  return Number(hours) * 60 + Number(rest)
}

describe('two ways compared', () => {
  test('a way beside itself differs in nothing', () => {
    const figures = comparedFigures(planNow(), planNow())
    expect(figures.length).toBeGreaterThan(8)
    expect(figures.filter(({ hasMoved }) => hasMoved)).toEqual([])
  })

  test('a time moves by what a reader finds who takes the shown ones from each other', () => {
    const a = planNow()
    for (const length of ['30 ft', '34 ft', '40 ft', '55 ft', '29 ft']) {
      model.set('line.length', length)
      const times = comparedFigures(a, planNow()).filter(
        ({ name, hasMoved }) => /crossing|Hammer/.test(name) && hasMoved,
      )
      for (const { a: before, now, difference } of times) {
        const moved = minutes(now) - minutes(before)
        expect(minutes(difference.replace(/^[+−]/, ''))).toBe(Math.abs(moved))
        expect(difference).toMatch(moved > 0 ? /^\+.* longer$/ : /^−.* shorter$/)
      }
    }
  })

  test('a price that goes is said to have changed', () => {
    const a = planNow()
    model.set('rates', undefined)
    const price = comparedFigures(a, planNow()).find(({ name }) => name === 'Price to quote')
    expect(price).toMatchObject({ now: '—', difference: 'changed', hasMoved: true })
  })

  test('back to A brings back what was typed', async () => {
    render(<Answers model={model} />)
    fireEvent.click(screen.getByRole('button', { name: 'Keep this as A' }))
    await screen.findByRole('table', { name: 'A beside what stands now' })
    model.set('line.length', '40 ft')
    fireEvent.click(screen.getByRole('button', { name: 'Back to A' }))
    expect(model.document.value).toEqual(FIRST_PRESET)
  })
})

describe('figures without a relation open what they are made of', () => {
  test('a price: lines, their sum, what is read from the draws', () => {
    const { price } = planNow()
    if (price === undefined) throw new Error('no price')
    const parts = madeOfPrice(price)
    expect(parts.length).toBe(price.lines.length + 4)
    expect(parts.at(-1)?.name).toBe('To quote')
  })

  test.each([
    [/^Least cover/, 'wanted under road'],
    [/^Wear of rings/, 'life of rings and seals'],
    [/^People needed/, 'At the tool and the exit'],
  ])('%s', async (figure, part) => {
    render(<Answers model={model} />)
    // Folded parts are in the page all the same.
    fireEvent.click(await screen.findByRole('button', { name: figure, hidden: true }, { timeout: 5000 }))
    const dialog = await screen.findByRole('dialog')
    expect(within(dialog).getByText(new RegExp(part, 'i'))).toBeTruthy()
  })
})
