import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readCivil } from '../../../shared/core/digsafe/civil.ts'
import { releaseGate } from '../../../shared/core/digsafe/release-gate.ts'
import { SIGN_ITEMS } from '../../../shared/core/digsafe/sign-off-items.ts'
import { gateFacts } from '../../../shared/core/plan/gate-facts.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { type CrossingDocument, demoDocument, inputOf, planOf } from '../../support/crossings.ts'

const NOW = readCivil('2026-12-01T10:00') ?? 0
const PLAN = 'c'.repeat(64)
const signed = (['day', 'site', 'bore'] as const).map((layer) => ({
  layer,
  atMinute: NOW - 60,
  by: 'Ada',
  bore: 1,
  items: SIGN_ITEMS.map((each) => each.id),
  photos: SIGN_ITEMS.map((each) => each.id),
  plan: PLAN,
  watchers: ['Bo', 'Cy', 'Di', 'Ed', 'Flo', 'Gus'],
  why: null,
  setAside: null,
}))
const asked = {
  nowMinute: NOW,
  where: 'site' as const,
  asOfMinute: NOW,
  bore: 1,
  plan: PLAN,
  signOffs: signed,
}
const RANK = { hold: 0, check: 1, ready: 2 }
const answerTo = (document: CrossingDocument, plan: Plan = planOf(document)) =>
  releaseGate(gateFacts(inputOf(document), plan, asked))
const rank = (document: CrossingDocument) => RANK[answerTo(document).status]

const base = demoDocument('short-side-water')
const document: CrossingDocument = {
  ...base,
  locate: {
    ...(base.locate as CrossingDocument),
    ticket: {
      ...((base.locate as CrossingDocument).ticket as CrossingDocument),
      starts: '2026-11-25T07:00',
      expires: '2026-12-15T07:00',
    },
  },
}

describe('plan, ticket and signatures together', () => {
  test('a plan that holds nothing, signed, on site, in the life of its ticket: ready', () => {
    expect(planOf(document).release.status).toBe('check')
    expect(answerTo(document)).toMatchObject({ status: 'ready' })
  })
  test('the printed ticket alone counts', () => {
    const late = {
      ...(document.locate as CrossingDocument),
      ticket: { starts: '2026-11-01T07:00', expires: '2026-11-30T07:00' },
    }
    expect(rank({ ...document, locate: late })).toBe(0)
  })
  test('every rule and missing fact of any plan holds the gate too', () => {
    const { locate: _gone, ...unasked } = document
    expect(rank(unasked)).toBe(0)
    const { utilities: _lines, utilitiesAsked: _by, ...silent } = document
    expect(rank(silent)).toBe(0)
  })
  test('chances change nothing', () => {
    const plan = planOf(document)
    const sure: Plan = {
      ...plan,
      run: { ...plan.run, arrivalProbability: 0.01, refusalProbability: 0.99 },
      clearances: plan.clearances.map((each) => ({ ...each, contactProbability: 0.9 })),
      shots: plan.shots.map((shot) => ({
        ...shot,
        deviation: { ...shot.deviation, hitProbability: 0.01 },
        clearances: shot.clearances.map((each) => ({ ...each, contactProbability: 0.9 })),
      })),
    }
    expect(answerTo(document, sure)).toEqual(answerTo(document, plan))
  })
})

test('a line alongside has open holes too, and each wants its watcher', () => {
  const alongside = { kind: 'telecom', offset: '60 in', depth: '24 in', depthTo: 'top', diameter: '1 in' }
  const opened = { ...alongside, from: '2 ft', to: '18 ft', evidence: 'exposed', private: true }
  const whole = { ...document, utilities: [opened] }
  expect(answerTo(whole)).toMatchObject({ status: 'ready', watchers: { needed: 1 } })
  expect(planOf(whole).crew.watchers).toBe(1)
  const alone = signed.map((each) => ({ ...each, watchers: [] }))
  const unwatched = releaseGate(gateFacts(inputOf(whole), planOf(whole), { ...asked, signOffs: alone }))
  expect(unwatched.status).toBe('hold')
})

const line = fc.record({
  kind: fc.constantFrom('gas', 'water', 'electric', 'sewer'),
  station: fc.integer({ min: 2, max: 26 }).map((feet) => `${feet} ft`),
  depth: fc.integer({ min: 6, max: 90 }).map((inches) => `${inches} in`),
  depthTo: fc.constant('top'),
  diameter: fc.constant('2 in'),
  evidence: fc.constantFrom('records', 'marked', 'detected', 'proved'),
})
const DOUBT = ['exposed', 'detected', 'marked', 'records']

describe('never better', () => {
  const withLines = (utilities: readonly unknown[]) => ({
    ...document,
    utilities,
    spread: { seed: 1, draws: 64 },
  })
  test('with a line more that nobody has opened up', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 2 }), line, (lines, more) => {
        expect(rank(withLines([...lines, more]))).toBeLessThanOrEqual(rank(withLines(lines)))
      }),
      { numRuns: 40 },
    )
  })
  test('with more doubt about a line', () => {
    fc.assert(
      fc.property(line, fc.nat(2), (each, from) => {
        const ranks = DOUBT.slice(from).map((evidence) => rank(withLines([{ ...each, evidence }])))
        expect([...ranks].sort((a, b) => b - a)).toEqual(ranks)
      }),
      { numRuns: 40 },
    )
  })
  test('with an answer less', () => {
    const locate = document.locate as { responses: readonly unknown[] }
    locate.responses.forEach((_, place) => {
      const responses = locate.responses.filter((__, other) => other !== place)
      expect(rank({ ...document, locate: { ...locate, responses } })).toBeLessThanOrEqual(rank(document))
    })
  })
})
