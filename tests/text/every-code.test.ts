import '../../shared/text/spanish.ts'
import { describe, expect, test } from 'vitest'
import { QUALITY_SCHEMES } from '../../shared/core/digsafe/quality-levels.ts'
import {
  RELEASE_POINTS,
  REOPEN_CAUSES,
  SIGN_ITEMS,
  SIGN_LAYERS,
} from '../../shared/core/digsafe/sign-off-items.ts'
import { DECIDERS } from '../../shared/core/ground/ground-evidence.ts'
import { AIR_CHANGES } from '../../shared/core/plan/air-changes.ts'
import { FOUND_ON_GROUND, PRIVATE_ANSWERS, PRIVATE_KINDS } from '../../shared/core/plan/asked-input.ts'
import { DEFAULTS } from '../../shared/core/plan/assumptions.ts'
import {
  AIM_METHODS,
  DEPTH_DATUMS,
  DUG,
  END_KINDS,
  EVIDENCE,
  HEADS,
  OBSERVATION_METHODS,
  OVER_KINDS,
  PULL_METHODS,
  STONES,
  UTILITY_KINDS,
} from '../../shared/core/plan/crossing-input.ts'
import { AGREEMENTS, HAMMER_DIMENSIONS } from '../../shared/core/plan/ground-answers.ts'
import { GROUND_FAMILIES } from '../../shared/core/plan/learned-input.ts'
import { COHESIVE_STATES, GRANULAR_STATES } from '../../shared/tables/ground-families.ts'
import { USCS_SOILS } from '../../shared/tables/uscs-soils.ts'
import { AIR_FIX_TEMPLATES } from '../../shared/text/air-fix-sentences.ts'
import { ASSUMPTION_TEMPLATES } from '../../shared/text/assumption-words.ts'
import { CAUTION_TEMPLATES } from '../../shared/text/caution-sentences.ts'
import { CHECKLIST_TEMPLATES } from '../../shared/text/checklist-sentences.ts'
import { ES_ACCEPTED } from '../../shared/text/es-accepted.ts'
import { GATE_TEMPLATES } from '../../shared/text/gate-sentences.ts'
import { GROUND_TEMPLATES } from '../../shared/text/ground-sentences.ts'
import { ISSUE_TEMPLATES } from '../../shared/text/issue-sentences.ts'
import { PATH_TEMPLATES } from '../../shared/text/path-sentences.ts'
import { knowsWord, type WordGroup } from '../../shared/text/plan-words.ts'
import { RELEASE_TEMPLATES } from '../../shared/text/release-sentences.ts'
import { soilWord } from '../../shared/text/soil-words.ts'
import { CODES, codesIn, notedAssumptions, sourceOf, sourcesUnder } from './codes-in-core.ts'

const SENTENCES = [
  ['issue', CODES.issue, ISSUE_TEMPLATES, 20],
  ['release', CODES.release, RELEASE_TEMPLATES, 20],
  ['caution', CODES.caution, CAUTION_TEMPLATES, 20],
  ['checklist', CODES.checklist, CHECKLIST_TEMPLATES, 30],
] as const

describe('a sentence for every code the engine gives', () => {
  for (const [subject, codes, templates, atLeast] of SENTENCES) {
    test(subject, () => {
      expect(codes.length).toBeGreaterThanOrEqual(atLeast)
      for (const lang of ['en', 'es'] as const) {
        expect(codes.filter((code) => !Object.hasOwn(templates[lang], code))).toEqual([])
      }
    })
    test(`${subject}: none for a code that is not given`, () => {
      const bare = Object.keys(templates.en).filter((code) => !code.includes('/'))
      expect(bare.filter((code) => !codes.includes(code))).toEqual([])
    })
  }
})

const WORDS: readonly (readonly [WordGroup, readonly string[]])[] = [
  ['pull', PULL_METHODS],
  ['privateLine', PRIVATE_KINDS],
  ['privateAnswer', PRIVATE_ANSWERS],
  ['foundOnGround', FOUND_ON_GROUND],
  ['qualityScheme', QUALITY_SCHEMES],
  ['pullWhy', CODES.pullWhy],
  ['priceLine', [...CODES.priceLine, ...OVER_KINDS.map((kind) => `restoration-${kind}`)]],
  ['wearPart', CODES.wearPart],
  [
    'serviceTask',
    [
      ...CODES.serviceTask.filter((code) => !CODES.wearPart.includes(code)),
      ...CODES.wearPart.filter((code) => code !== 'strip-down').map((part) => `replace-${part}`),
    ],
  ],
  ['fit', CODES.fit],
  ['surface', OVER_KINDS],
  ['utility', UTILITY_KINDS],
  ['end', END_KINDS],
  ['evidence', EVIDENCE],
  ['datum', DEPTH_DATUMS],
  ['lookedBy', OBSERVATION_METHODS],
  ['head', HEADS],
  ['stones', STONES],
  ['dug', DUG],
  ['ground', [...COHESIVE_STATES, ...GRANULAR_STATES].map((state) => state.code)],
  ['airFlag', CODES.airFlag],
  ['limitedBy', CODES.limitedBy],
  ['toolState', CODES.toolState],
  ['airElement', CODES.airElement],
  ['severity', CODES.severity],
  ['reasonKind', CODES.reasonKind],
  ['standing', CODES.standing],
  ['pitServes', CODES.pitServes],
  ['limitWhy', CODES.limitWhy],
  ['clearanceWhy', CODES.clearanceWhy],
  ['when', CODES.when],
]

test('a sentence for every change of air', () => {
  for (const lang of ['en', 'es'] as const) {
    const known = Object.keys(AIR_FIX_TEMPLATES[lang]).filter((key) => !key.includes('/'))
    expect([...known].sort()).toEqual([...AIR_CHANGES].sort())
  }
})

describe('words for every code', () => {
  test.each(WORDS)('%s', (group, codes) => {
    expect(codes.length).toBeGreaterThan(2)
    expect(codes.filter((code) => !knowsWord(group, code))).toEqual([])
  })

  test('every soil group', () => {
    for (const lang of ['en', 'es'] as const) {
      const bare = USCS_SOILS.filter(({ symbol }) =>
        soilWord(symbol, 'stiff', { lang, system: 'us' }).includes(symbol),
      )
      expect(bare.map((each) => each.symbol)).toEqual([])
    }
  })

  test('every point, item and cause of the release on site', () => {
    const keys = [
      ...RELEASE_POINTS.map((point) => `point/${point}`),
      ...SIGN_ITEMS.map((item) => `item/${item.id}`),
      ...SIGN_LAYERS.map((layer) => `layer/${layer}`),
      ...REOPEN_CAUSES.map((cause) => `cause/${cause}`),
    ]
    expect(keys.filter((key) => !Object.hasOwn(GATE_TEMPLATES.es, key))).toEqual([])
    const named = Object.keys(GATE_TEMPLATES.en).filter((key) => /^(item|cause|layer)\//.test(key))
    expect(named.filter((key) => !keys.includes(key))).toEqual([])
  })

  test('every evidence of the ground, and everything worth knowing', () => {
    const keys = [
      ...GROUND_FAMILIES.map((each) => `family/${each}`),
      ...DECIDERS.map((each) => `evidence/${each}`),
      ...AGREEMENTS.map((each) => `agreement/${each}`),
      ...HAMMER_DIMENSIONS.map((each) => `matter/${each}`),
    ]
    expect(keys.filter((key) => !Object.hasOwn(GROUND_TEMPLATES.es, key))).toEqual([])
    const named = Object.keys(GROUND_TEMPLATES.en).filter((key) =>
      /^(evidence|agreement|matter|family)\//.test(key),
    )
    expect(named.filter((key) => !keys.includes(key))).toEqual([])
  })

  test('every proposal, and how a tool is aimed', () => {
    expect(CODES.proposal.length).toBe(4)
    expect(CODES.proposal.filter((code) => !Object.hasOwn(PATH_TEMPLATES.es, `propose/${code}`))).toEqual([])
    expect(AIM_METHODS.filter((method) => !knowsWord('aim', method))).toEqual([])
  })

  test('every assumption', () => {
    const names = [...Object.keys(DEFAULTS), ...notedAssumptions()]
    expect(names.length).toBeGreaterThan(45)
    expect(names.filter((name) => !Object.hasOwn(ASSUMPTION_TEMPLATES.en, name))).toEqual([])
  })
})

describe('what would do, in Spanish', () => {
  const sources = ['shared/contracts', 'shared/core', 'shared/quantities', 'src'].flatMap(sourcesUnder)
  const phrases = sources.flatMap(({ text }) => codesIn(text, /(?:accepted|means): '([^']+)'/g))
  const meanings = ['crossing-parts', 'utilities'].flatMap((name) =>
    codesIn(
      /DATUM_MEANS = \{([\s\S]*?)\}/.exec(sourceOf(`shared/contracts/${name}.ts`))?.[1] ?? '',
      /'([^']+)'/g,
    ),
  )
  /** Units, keys and names of formats are the same everywhere. */
  const needsNone = (phrase: string): boolean =>
    /^[\w/.…-]+(, ?[\w/.…-]+)*$/.test(phrase) && !/^[a-z]{4,}$/.test(phrase)

  test('every phrase of a door or the engine', () => {
    const all = [...new Set([...phrases, ...meanings])]
    expect(meanings.length).toBeGreaterThanOrEqual(7)
    expect(all.filter((phrase) => !needsNone(phrase) && !Object.hasOwn(ES_ACCEPTED, phrase))).toEqual([])
  })
})
