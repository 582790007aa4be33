// @vitest-environment happy-dom
import '../../web/words/spanish.ts'
import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, expect, test } from 'vitest'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import { FieldGuide } from '../../web/crossings/form/field-guide.tsx'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import { createCrossingModel } from '../../web/state/crossing-model.ts'
import { textAt } from '../../web/state/document-path.ts'
import { language } from '../../web/state/language-choice.ts'

afterEach(() => {
  cleanup()
  language.value = 'en'
})

test.each(['en', 'es'] as const)('every sign of the hand sets a word the engine reads (%s)', (lang) => {
  language.value = lang
  const model = createCrossingModel(FIRST_PRESET, { soon: (run) => run() })
  render(<FieldGuide model={model} path="ground.0" />)
  const buttons = screen.getAllByRole('button', { hidden: true })
  expect(buttons).toHaveLength(12)
  for (const button of buttons) {
    fireEvent.click(button)
    expect(button.getAttribute('aria-pressed')).toBe('true')
    const parsed = parseCrossing(model.document.value)
    expect(parsed.ok ? [] : parsed.issues).toEqual([])
    expect(model.issues.value).toEqual([])
  }
  expect(textAt(model.document.value, 'ground.0.consistency')).toBe('hard')
  expect(textAt(model.document.value, 'ground.0.word')).toBe(lang === 'es' ? 'arcilla' : 'clay')
})
