// @vitest-environment happy-dom
import { act, cleanup, render, screen } from '@testing-library/preact'
import '../support/late-parts.ts'
import { afterEach, describe, expect, test } from 'vitest'
import { EN_ACCESS } from '../../web/access/access-words.ts'
import { Answers } from '../../web/crossings/answers/answers.tsx'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import { EN_OFFLINE } from '../../web/offline/offline-words.ts'
import { chooseLanguage } from '../../web/settings/choose-language.ts'
import { EN_SHOP } from '../../web/shop/shop-words.ts'
import { createCrossingModel } from '../../web/state/crossing-model.ts'
import { language, wantedLanguage } from '../../web/state/language-choice.ts'
import { chooseUnits } from '../../web/state/unit-choice.ts'
import { EN_ANSWERS } from '../../web/words/answer-words.ts'
import { EN_FIELD_WORDS } from '../../web/words/field-words.ts'
import { EN_FORM, FORM } from '../../web/words/form-words.ts'
import { FURTHER } from '../../web/words/further-words.ts'
import { placeWords } from '../../web/words/place-words.ts'
import { EN_SHELL } from '../../web/words/shell-words.ts'
import { SPANISH_WORDS } from '../../web/words/spanish.ts'
import { EN_WORKINGS } from '../../web/words/workings-words.ts'

afterEach(async () => {
  cleanup()
  chooseUnits('us')
  await act(() => chooseLanguage('en'))
})

/** Every sentence of a table with where it stands. */
function texts(value: unknown, at: string): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return [[at, value]]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, each]) => texts(each, `${at}.${key}`))
}

describe('Spanish', () => {
  const ENGLISH = {
    access: EN_ACCESS,
    answers: EN_ANSWERS,
    fields: EN_FIELD_WORDS,
    form: EN_FORM,
    offline: EN_OFFLINE,
    shell: EN_SHELL,
    shop: EN_SHOP,
    workings: EN_WORKINGS,
  }
  /** The same in both languages, or no words at all. */
  const SAME = /^(|no|gas|US-VA|Underlane|English|Español|A|SI|Material|.*\d.*)$/

  test('has every list as long as English has it, and nothing left in English', () => {
    for (const [name, english] of Object.entries(ENGLISH)) {
      const spanish = new Map(texts(Reflect.get(SPANISH_WORDS, name), name))
      const all = texts(english, name)
      expect([...spanish.keys()].sort()).toEqual(all.map(([at]) => at).sort())
      expect(all.filter(([at, text]) => spanish.get(at) === text && !SAME.test(text))).toEqual([])
    }
  })

  test('is spoken by what was drawn in English, and remembered', async () => {
    render(<Answers model={createCrossingModel(FIRST_PRESET, { soon: (run) => run() })} />)
    expect(screen.getByRole('heading', { name: 'Release' })).toBeTruthy()
    await act(() => chooseLanguage('es'))
    expect(screen.getByRole('heading', { name: 'Liberación' })).toBeTruthy()
    expect(screen.queryByRole('heading', { name: 'Release' })).toBeNull()
    // The answers below the first screen come later; they come in Spanish.
    expect(await screen.findByText('Supuestos', {}, { timeout: 10_000 })).toBeTruthy()
    expect(document.documentElement.lang).toBe('es')
    expect(language.value).toBe('es')
    expect(wantedLanguage()).toBe('es')
  })
})

describe('spelling follows the units', () => {
  test('US for US customary, the other for SI', () => {
    expect(FORM.start.jobs['fibre-drop']).toBe('Fiber drop')
    chooseUnits('si')
    expect(FORM.start.jobs['fibre-drop']).toBe('Fibre drop')
    expect(FURTHER.path.grade).toContain('25 mm')
  })
})

describe('a place of the file', () => {
  test.each([
    ['tool', 'Tool'],
    ['air.hoses.1.bore', 'Hose bore (inside), 2'],
    ['utilities.0.depthTo', 'Depth is to, 1'],
    ['air.hoses.0.couplings', 'Hose, 1'],
    ['somethingElse', 'somethingElse'],
  ])('%s is called %s', (path, words) => {
    expect(placeWords(path)).toBe(words)
  })
})
