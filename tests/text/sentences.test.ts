import '../../shared/text/spanish.ts'
import { describe, expect, test } from 'vitest'
import { AIR_FIX_TEMPLATES } from '../../shared/text/air-fix-sentences.ts'
import { ASSUMPTION_TEMPLATES, assumedValue, assumptionName } from '../../shared/text/assumption-words.ts'
import { CAUTION_TEMPLATES, cautionSentence } from '../../shared/text/caution-sentences.ts'
import { CHECKLIST_TEMPLATES, checklistWhen } from '../../shared/text/checklist-sentences.ts'
import { EN_WORDS } from '../../shared/text/en-words.ts'
import { ES_WORDS } from '../../shared/text/es-words.ts'
import { fill, isWay } from '../../shared/text/fill.ts'
import { GATE_TEMPLATES } from '../../shared/text/gate-sentences.ts'
import { ISSUE_TEMPLATES, issueSentence } from '../../shared/text/issue-sentences.ts'
import type { Language, Say } from '../../shared/text/language.ts'
import { PATH_TEMPLATES } from '../../shared/text/path-sentences.ts'
import { airElementWord, planWord } from '../../shared/text/plan-words.ts'
import {
  RELEASE_TEMPLATES,
  releaseSentence,
  statusMeaning,
  statusWord,
} from '../../shared/text/release-sentences.ts'
import { saidOdds } from '../../shared/text/say-quantity.ts'
import { VERDICT_TEMPLATES } from '../../shared/text/verdict-sentence.ts'
import { sourceOf } from './codes-in-core.ts'
import { SAMPLE } from './sample-values.ts'

const EN_US: Say = { lang: 'en', system: 'us' }
const ES_SI: Say = { lang: 'es', system: 'si' }
const SAYS: readonly Say[] = [EN_US, { lang: 'en', system: 'si' }, { lang: 'es', system: 'us' }, ES_SI]

const TABLES = [
  RELEASE_TEMPLATES,
  CAUTION_TEMPLATES,
  CHECKLIST_TEMPLATES,
  ISSUE_TEMPLATES,
  VERDICT_TEMPLATES,
  PATH_TEMPLATES,
  GATE_TEMPLATES,
  ASSUMPTION_TEMPLATES,
  AIR_FIX_TEMPLATES,
]
type Line = { readonly key: string; readonly template: string }
const linesOf = (lang: Language): readonly Line[] =>
  TABLES.flatMap((table) => Object.entries<string>(table[lang]).map(([key, template]) => ({ key, template })))
const placeholders = (template: string) =>
  [...template.matchAll(/\{([^{}|]+)\}/g)].map((found) => (found[1] ?? '').split(':'))

/** What may stand after a number: its unit, or what is counted. */
const UNIT =
  /^(?:\s?(?:ft|in|m|mm|cm|m³|ft³|in³|gal|L|lb|lbf|kg|N|kN|J|kJ|psi|bar|cfm|m³\/min|°F|°C|K|min|h|s|%|°|MB|dB\(A\)|bore diameters|diámetros|times|veces|or more|o más|characters|caracteres|per|por)(?![a-z])|°)/
/** Numbers that are names or shares. */
const NAMED =
  /(?:line|línea|bore|perforación|needs|named|hacen falta|van|call|llame al|lleva el|carries|ground|tramo|shot|tiro|pipe|tubo|1 in|1 de cada|“|«|and|de|decir|JSON:|Did you mean|at the|entre|between|\d,)\s?$/i

function bareNumbers(text: string): readonly string[] {
  return [...text.matchAll(/(?<![\w.,/$-])\d[\d.,]*(?:[-/ ]\d+\/\d+|\/\d+)?(?<![.,])/g)]
    .filter((found) => {
      const after = text.slice(found.index + found[0].length)
      const before = text.slice(0, found.index)
      return (
        !UNIT.test(after) && !NAMED.test(before) && !/^ (in|de cada) \d/.test(after) && found[0] !== '911'
      )
    })
    .map((found) => `${found[0]} in: ${text}`)
}

describe('every sentence, filled', () => {
  test.each(SAYS)('says nothing broken in $lang, $system', (say) => {
    for (const { key, template } of linesOf(say.lang)) {
      const text = fill(template, SAMPLE, say)
      expect(text, key).not.toMatch(/undefined|NaN|\[object|[{}]|—|Infinity/)
      expect(text, key).toMatch(/^[A-Z¿“«ÁÉÍÓÚ0-9]/)
      expect(bareNumbers(text), key).toEqual([])
    }
  })

  test('asks only for ways there are', () => {
    const odd = linesOf('en')
      .concat(linesOf('es'))
      .flatMap(({ key, template }) =>
        placeholders(template)
          .filter(([name = '', how = '']) => !isWay(how) || !Object.hasOwn(SAMPLE, name))
          .map((part) => `${key}: ${part.join(':')}`),
      )
    expect(odd).toEqual([])
  })

  test('takes the same values in both languages', () => {
    for (const table of TABLES) {
      const es: Readonly<Record<string, string>> = table.es
      for (const [key, template] of Object.entries<string>(table.en)) {
        const sorted = (text: string) =>
          placeholders(text)
            .map((part) => part.join(':'))
            .sort()
        expect(sorted(es[key] ?? ''), key).toEqual(sorted(template))
      }
    }
  })

  test('asks only for values the engine gives with the code', () => {
    const given: readonly (readonly [
      { readonly en: Readonly<Record<string, string>> },
      readonly string[],
    ])[] = [
      [RELEASE_TEMPLATES, ['release', 'asked-reasons']],
      [CAUTION_TEMPLATES, ['cautions']],
    ]
    for (const [table, names] of given) {
      const source = names.map((name) => sourceOf(`shared/core/plan/${name}.ts`)).join('\n')
      for (const [key, template] of Object.entries(table.en)) {
        const missing = placeholders(template).filter(([name]) => !new RegExp(`\\b${name}\\b`).test(source))
        expect(missing, key).toEqual([])
      }
    }
  })

  test('is written in its own language', () => {
    for (const say of SAYS.filter((each) => each.lang === 'es')) {
      for (const { key, template } of linesOf('es')) {
        expect(fill(template, { ...SAMPLE, owner: '', ground: '' }, say), key).not.toMatch(
          /\b(the|and|with|not|which|from|blows?)\b/i,
        )
      }
    }
    for (const table of TABLES) {
      const es: Readonly<Record<string, string>> = table.es
      const same = Object.entries<string>(table.en).filter(
        ([key, text]) => text.length > 12 && es[key] === text,
      )
      expect(same).toEqual([])
    }
    const groups: Readonly<Record<string, Readonly<Record<string, string>>>> = ES_WORDS
    for (const [group, words] of Object.entries<Readonly<Record<string, string>>>(EN_WORDS)) {
      const same = Object.entries(words).filter(
        ([code, text]) => text.length > 12 && groups[group]?.[code] === text,
      )
      expect(same, group).toEqual([])
    }
  })
})

describe('words that must not be said', () => {
  const english = linesOf('en').map(({ template }) => template)
  const words = Object.values<Readonly<Record<string, string>>>(EN_WORDS).flatMap((group) =>
    Object.values(group),
  )

  test('our status is never clear, and a plan never says ready', () => {
    expect([...english, ...words].filter((text) => /\bclear\b/i.test(text))).toEqual([])
    for (const lang of ['en', 'es'] as const) {
      const status = ['hold', 'check'] as const
      const said = [
        ...Object.values<string>(RELEASE_TEMPLATES[lang]),
        ...status.flatMap((each) => [statusWord(each, lang), statusMeaning(each, lang)]),
      ]
      expect(
        said.filter((text) => /\b(clear|ready|safe|listo|lista para|libre|seguro)\b/i.test(text)),
      ).toEqual([])
    }
  })

  test('no statistician’s words', () => {
    const all = [...english, ...linesOf('es').map(({ template }) => template), ...words]
    expect(
      all.filter((text) => /posterior|condition(ed|ado)|intensi(ty|dad)|scramble|percentil/i.test(text)),
    ).toEqual([])
  })

  test('gas: leave it, switch nothing, follow the owner', () => {
    const gas = cautionSentence({ id: 'gas-struck', values: {} }, EN_US)
    expect(gas).toContain('Leave it. Do not go back to switch anything on or off near the gas.')
    expect(gas).toMatch(/330 ft .*911.*owner.*local rules/)
    expect(cautionSentence({ id: 'gas-struck', values: {} }, ES_SI)).toContain('100 m')
  })
})

describe('release', () => {
  test('the rule, the figures and the way out', () => {
    const values = { line: 2, kind: 'gas', shortM: 0.1, requiredM: 0.4572, separationM: 0.3572 }
    expect(releaseSentence({ code: 'clearance-short', values }, EN_US)).toBe(
      'Line 2, gas: 14 in from the bore’s center to the line; it takes 18 in, so 4 in is missing. Take the bore that much farther from it (deeper, where it passes under), launch from the nearer pit, or move the path.',
    )
  })

  test('a gravity sewer has another way of proof, a gas line has none', () => {
    const said = (kind: string) =>
      releaseSentence({ code: 'line-not-exposed', values: { line: 1, kind } }, EN_US)
    expect(said('sewer')).toContain('manhole')
    expect(said('gas')).not.toContain('manhole')
  })

  test('no way in at all', () => {
    const values = { method: 'none', why: 'no-sane-method' }
    expect(releaseSentence({ code: 'pull-not-sane', values }, EN_US)).toMatch(
      /^Getting the pipe in: the hole will not stay open/,
    )
  })

  test('a code of a later version is still said', () => {
    expect(releaseSentence({ code: 'something-new', values: {} }, EN_US)).toBe('Something new.')
  })
})

describe('words', () => {
  test('systems keep apart', () => {
    expect(checklistWhen({ when: 'pit-5-ft' }, EN_US)).toBe('pit 5 ft or deeper')
    expect(checklistWhen({ when: 'pit-5-ft' }, ES_SI)).toBe('pozo de 1.5 m o más')
  })
  test('the air line counts its hoses', () => {
    expect(airElementWord('hose-2', EN_US)).toBe('hose 2')
    expect(airElementWord('lubricator-1', ES_SI)).toBe('aceitera')
  })
  test('an unknown code stands in plain words, an inherited name is no code', () => {
    expect(planWord('surface', 'moon-dust', EN_US)).toBe('moon dust')
    expect(planWord('surface', 'constructor', EN_US)).toBe('constructor')
  })
  test('assumptions count from one and carry units', () => {
    expect(assumptionName('ground.0.stones', EN_US)).toBe('Stones, ground 1')
    expect(assumedValue({ name: 'clearance.standard', value: 0.3048, unit: 'm' }, EN_US)).toBe('12 in')
    expect(assumedValue({ name: 'tool.ratedPressure', value: 650_000, unit: 'Pa' }, ES_SI)).toBe('6.5 bar')
    expect(assumedValue({ name: 'tool.blowRate', value: 6, unit: 'Hz' }, { lang: 'es', system: 'us' })).toBe(
      '360 golpes/min',
    )
    expect(assumedValue({ name: 'ground.0.stones', value: 'not said', unit: '' }, ES_SI)).toBe('no se dijo')
  })
  test.each([
    [1 / 15, '1 in 15'],
    [0.0004, 'fewer than 1 in 1,000'],
    [0.42, '4 in 10'],
    [1, '9 in 10'],
    [Number.NaN, '—'],
  ])('odds of %d', (probability, text) => {
    expect(saidOdds(probability, 'en')).toBe(text)
  })
})

describe('refusals', () => {
  test('a bare number asks for its unit', () => {
    const candidates = [
      { value: '42 ft', means: 'ft' },
      { value: '42 m', means: 'm' },
    ]
    const issue = {
      path: 'line.length',
      code: 'ask',
      given: '42',
      accepted: 'ft, m',
      candidates,
    } as const
    expect(issueSentence(issue, 'en')).toBe(
      '“42” has no unit, and we do not guess one. Accepted: ft, m. Did you mean 42 ft or 42 m?',
    )
    expect(issueSentence(issue, 'es')).toBe(
      '«42» no tiene unidad, y no la adivinamos. Se acepta: ft, m. ¿Quiso decir 42 ft o 42 m?',
    )
  })

  test('a depth without its datum is a question', () => {
    const candidates = [{ value: 'top', means: 'depth to its centre' }]
    expect(issueSentence({ path: 'utilities.0.depthTo', code: 'ask', candidates }, 'es')).toBe(
      '¿A qué se mide la profundidad de esta línea? Conteste top (profundidad a su centro).',
    )
  })

  test('limits come in both systems', () => {
    const values = { kind: 'length', min: 0.3048, max: 304.8 }
    expect(issueSentence({ path: 'line', code: 'out-of-range', given: '2 mi', values }, 'en')).toBe(
      '“2 mi” is outside what can be. It must lie between 1 ft (0.30 m) and 1000 ft (304.80 m).',
    )
  })

  test('a limit of a diameter is one a rule shows, and one that is taken', () => {
    const values = { kind: 'diameter', min: 0.025, max: 0.4 }
    expect(
      issueSentence({ path: 'tool.diameter', code: 'out-of-range', given: '1/2 in', values }, 'en'),
    ).toBe('“1/2 in” is outside what can be. It must lie between 1 in (25 mm) and 15-11/16 in (400 mm).')
  })

  test('what is missing is named by its kind', () => {
    expect(issueSentence({ path: 'tool.diameter', code: 'required', accepted: 'diameter' }, 'en')).toBe(
      'This is missing. Needed: a diameter (in, mm).',
    )
  })

  test('a hostile value is only echoed', () => {
    const given = '{list:text} {1 ft|2 m} $& constructor'
    expect(issueSentence({ path: 'x', code: 'unknown-choice', given }, 'en')).toContain(given)
  })
})
