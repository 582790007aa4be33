import { useState } from 'preact/hooks'
import type { UnitSystem } from '../../shared/quantities/format-quantity.ts'
import type { Language } from '../../shared/text/language.ts'
import { isLanguageMissing, language } from '../state/language-choice.ts'
import { chooseTheme, THEMES, theme } from '../state/theme-choice.ts'
import { chooseUnits, units } from '../state/unit-choice.ts'
import { SHELL } from '../words/shell-words.ts'
import { chooseLanguage } from './choose-language.ts'

function UnitChoice() {
  const systems: readonly (readonly [UnitSystem, string])[] = [
    ['us', SHELL.us],
    ['si', SHELL.si],
  ]
  return (
    <fieldset class="choice-row">
      <legend class="unseen">{SHELL.units}</legend>
      {systems.map(([system, words]) => (
        <label key={system}>
          <input
            type="radio"
            name="units"
            checked={units.value === system}
            onChange={() => chooseUnits(system)}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  )
}

/** Each language by its own name, so that its readers find it. */
function LanguageChoice() {
  const languages: readonly (readonly [Language, string])[] = [
    ['en', SHELL.english],
    ['es', SHELL.spanish],
  ]
  return (
    <fieldset class="choice-row">
      <legend class="unseen">{SHELL.language}</legend>
      {languages.map(([each, name]) => (
        <label key={each} lang={each}>
          <input
            type="radio"
            name="language"
            checked={language.value === each}
            onChange={() => chooseLanguage(each)}
          />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  )
}

function ThemeChoice() {
  return (
    <div class="choice-row">
      <label for="theme-choice">{SHELL.theme}</label>
      <select
        id="theme-choice"
        value={theme.value}
        onChange={(event) => {
          const chosen = THEMES.find((each) => each === event.currentTarget.value)
          if (chosen) chooseTheme(chosen)
        }}
      >
        {THEMES.map((each) => (
          <option key={each} value={each}>
            {SHELL.themes[each]}
          </option>
        ))}
      </select>
    </div>
  )
}

/** How one reader wants it shown: units, language, screen. On a narrow screen behind one button. */
export function ReaderChoices() {
  const [isOpen, setOpen] = useState(false)
  return (
    <div class="reader-choices">
      <button
        type="button"
        class="choices-button"
        aria-expanded={isOpen}
        aria-controls="reader-choices"
        onClick={() => setOpen(!isOpen)}
      >
        {units.value === 'us' ? SHELL.us : SHELL.si} · {language.value.toUpperCase()}
        <span class="unseen">, {SHELL.settings}</span>
      </button>
      <div id="reader-choices" class={isOpen ? 'choices' : 'choices choices-closed'}>
        <UnitChoice />
        <LanguageChoice />
        <ThemeChoice />
      </div>
      <p class="choices-note" role="status">
        {isLanguageMissing.value && SHELL.languageMissing}
      </p>
    </div>
  )
}
