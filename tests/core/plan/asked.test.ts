import '../../support/one-seed.ts'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parseCrossing } from '../../../shared/contracts/crossing.ts'
import { jurisdictionOf } from '../../../shared/core/digsafe/jurisdiction-of.ts'
import { PRIVATE_ANSWERS, PRIVATE_KINDS } from '../../../shared/core/plan/asked-input.ts'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import { JURISDICTION_IDS, JURISDICTION_NAMES } from '../../../shared/tables/jurisdiction-ids.ts'
import { JURISDICTIONS } from '../../../shared/tables/jurisdictions.ts'
import { type CrossingDocument, demoDocument, planOf } from '../../support/crossings.ts'

/** A crossing on which nothing on paper holds. */
const GOOD = demoDocument('short-side-water')
const SIGNED = { by: 'Rosa, site owner', on: '2026-11-20T09:00' }
const ALL_NO = Object.fromEntries(PRIVATE_KINDS.map((kind) => [kind, 'no']))
const WHOLE: CrossingDocument = { ...GOOD, privateLines: { ...SIGNED, answers: ALL_NO } }

const statusOf = (document: CrossingDocument) => planOf(document).release.status
const codesOf = (document: CrossingDocument) => planOf(document).release.reasons.map((each) => each.code)
const rank = { check: 0, hold: 1 } as const
/** The status after is no better than before. */
const noBetter = (after: CrossingDocument, before: CrossingDocument) =>
  expect(rank[statusOf(after)]).toBeGreaterThanOrEqual(rank[statusOf(before)])

const locate = (change: CrossingDocument): CrossingDocument => ({
  ...WHOLE,
  locate: { ...(WHOLE.locate as CrossingDocument), ...change },
})
const lines = (change: CrossingDocument): CrossingDocument => ({
  ...WHOLE,
  utilities: [
    {
      kind: 'water',
      station: '14 ft',
      depth: '8 ft',
      depthTo: 'top',
      diameter: '2 in',
      evidence: 'exposed',
      ...change,
    },
  ],
})

test('the crossing these tests start from is to be checked, not held', () => {
  expect(statusOf(WHOLE)).toBe('check')
})

describe('the place and its rules', () => {
  test('unknown holds, with what to do; a name to having read its rules lets the printed ticket do the rest', () => {
    const unknown = locate({ jurisdiction: 'US-LA' })
    expect(codesOf(unknown)).toContain('jurisdiction-not-known')
    expect(statusOf(unknown)).toBe('hold')
    const read = locate({ jurisdiction: 'US-LA', rulesRead: SIGNED })
    expect(codesOf(read)).not.toContain('jurisdiction-not-known')
  })

  test('not given holds: leaving it out is no way around', () => {
    const { jurisdiction: _gone, ...rest } = WHOLE.locate as CrossingDocument
    expect(codesOf({ ...WHOLE, locate: rest })).toContain('jurisdiction-not-given')
  })

  test('is known by its code in any case, and by what people call it', () => {
    expect(['us-va', 'VA', ' US-VA '].map(jurisdictionOf)).toEqual(['US-VA', 'US-VA', 'US-VA'])
    expect(jurisdictionOf('UK')).toBe('GB')
    expect(jurisdictionOf('toString')).toBeNull()
  })

  test('the short list of codes is that of the rules', () => {
    expect(JURISDICTION_IDS).toEqual(JURISDICTIONS.map((row) => row.id))
    expect(Object.keys(JURISDICTION_NAMES)).toEqual(JURISDICTION_IDS)
  })
})

describe('the ticket and the answers', () => {
  test('a ticket that ends before it starts, or starts before the call, holds', () => {
    const dates = (starts: string, expires: string) =>
      locate({ called: '2026-11-20T10:00', ticket: { starts, expires } })
    expect(codesOf(dates('2026-11-25T07:00', '2026-11-24'))).toContain('ticket-dates')
    expect(codesOf(dates('2026-11-25T07:00', '2026-11-25T07:00'))).toContain('ticket-dates')
    expect(codesOf(dates('2026-11-19', '2026-12-10'))).toContain('ticket-before-call')
    // A day without an hour is not before a moment of the same day in letters only.
    expect(codesOf(dates('2026-11-25', '2026-12-10T23:59'))).not.toContain('ticket-dates')
  })

  test('an owner without an answer holds, as does an answer the ground contradicts', () => {
    const answered = (change: CrossingDocument) =>
      locate({ responses: [{ owner: 'Town Gas', answer: 'marked', ...change }] })
    expect(codesOf(locate({ responses: [{ owner: 'Town Gas' }] }))).toContain('owner-not-answered')
    expect(codesOf(answered({ found: 'nothing' }))).toContain('answer-not-on-ground')
    expect(codesOf(answered({ answer: 'clear', found: 'differs' }))).toContain('answer-not-on-ground')
    expect(codesOf(answered({ found: 'fits' }))).not.toContain('answer-not-on-ground')
  })

  test('taking an answer away never improves the status', () => {
    const responses = (WHOLE.locate as { responses: CrossingDocument[] }).responses
    fc.assert(
      fc.property(fc.nat({ max: responses.length - 1 }), (at) => {
        const silent = responses.map((each, index) => (index === at ? { owner: each.owner } : each))
        expect(statusOf(locate({ responses: silent }))).toBe('hold')
      }),
    )
  })
})

describe('private lines, asked by name', () => {
  const asked = (answers: CrossingDocument, more: CrossingDocument = SIGNED): CrossingDocument => ({
    ...GOOD,
    privateLines: { ...more, answers },
  })

  test('more doubt never improves the status', () => {
    const answer = fc.constantFrom(...PRIVATE_ANSWERS)
    fc.assert(
      fc.property(fc.constantFrom(...PRIVATE_KINDS), fc.array(answer, { maxLength: 10 }), (kind, given) => {
        const answers = Object.fromEntries(given.map((each, index) => [PRIVATE_KINDS[index], each]))
        const known = { ...answers, [kind]: 'no' }
        noBetter(asked({ ...answers, [kind]: 'unknown' }), asked(known))
        noBetter(asked({ ...answers, [kind]: 'yes' }), asked(known))
        noBetter(asked({ ...answers, [kind]: 'unknown' }), asked({ ...answers, [kind]: 'yes' }))
        noBetter(asked({}), asked(answers))
        const { [kind]: _gone, ...without } = known as CrossingDocument
        noBetter(asked(without), asked({ ...answers, [kind]: 'yes' }))
        noBetter(asked(without), asked(known))
        noBetter(asked(known, {}), asked(known))
      }),
      { numRuns: 25 },
    )
  })

  test('a yes turned to "don\'t know", or left out, still holds: it is a missing fact once anybody asked', () => {
    for (const answers of [{ ...ALL_NO, septic: 'yes' }, { ...ALL_NO, septic: 'unknown' }, {}])
      expect(statusOf(asked(answers))).toBe('hold')
    const { septic: _gone, ...without } = ALL_NO
    expect(statusOf(asked(without))).toBe('hold')
    const doubt = planOf(asked({ ...ALL_NO, septic: 'unknown' })).release.reasons
    expect(doubt).toContainEqual({
      kind: 'missing',
      code: 'private-not-known',
      values: { private: 'septic' },
    })
  })

  test('not asked is said, and no better than all asked', () => {
    expect(codesOf(GOOD)).toContain('private-not-asked')
    noBetter(GOOD, WHOLE)
    expect(codesOf(WHOLE).filter((code) => code.startsWith('private'))).toEqual([])
  })

  test('one that is there and not listed holds; located and away from the bore it does not', () => {
    expect(codesOf(asked({ ...ALL_NO, septic: 'yes' }))).toContain('private-not-listed')
    expect(statusOf(asked({ ...ALL_NO, septic: 'yes' }))).toBe('hold')
    expect(
      codesOf(asked({ ...ALL_NO, septic: 'away' })).filter((code) => code.startsWith('private')),
    ).toEqual([])
  })
})

describe('lines crossed', () => {
  test('adding a line or raising its doubt never improves the status', () => {
    const line = fc.record({
      kind: fc.constantFrom('gas', 'electric', 'sewer', 'septic', 'lighting'),
      station: fc.constantFrom('6 ft', '14 ft', '20 ft'),
      evidence: fc.constantFrom('records', 'marked', 'detected', 'exposed', 'proved'),
      depth: fc.constantFrom('10 in', '20 in', '60 in'),
      depthTo: fc.constantFrom('top', 'centre', 'bottom'),
      diameter: fc.constantFrom('1 in', '4 in'),
    })
    const doubts = ['exposed', 'detected', 'marked', 'records']
    fc.assert(
      fc.property(line, (added) => {
        const more = { ...WHOLE, utilities: [...(WHOLE.utilities as CrossingDocument[]), added] }
        noBetter(more, WHOLE)
        const at = doubts.indexOf(added.evidence)
        if (at < 0) return
        const doubted = { ...added, evidence: doubts[Math.min(at + 1, doubts.length - 1)] }
        noBetter({ ...more, utilities: [...(WHOLE.utilities as CrossingDocument[]), doubted] }, more)
      }),
      { numRuns: 40 },
    )
  })

  test('leaving out the owner who is silent, or a size or depth of a line alongside, is no way around', () => {
    expect(codesOf(lines({ owner: 'Town Gas' }))).toContain('listed-owner-silent')
    expect(codesOf(lines({}))).toContain('line-owner-not-given')
    expect(codesOf(lines({ private: true }))).not.toContain('line-owner-not-given')
    const beside = (change: CrossingDocument) =>
      lines({ private: true, station: undefined, from: '2 ft', to: '20 ft', offset: '18 in', ...change })
    expect(codesOf(beside({ diameter: undefined }))).toContain('line-size-not-known')
    expect(codesOf(beside({ depth: undefined, depthTo: undefined }))).toContain('line-depth-not-known')
    expect(statusOf(beside({ offset: '60 in' }))).toBe('check')
    expect(statusOf(beside({ offset: '60 in', diameter: undefined }))).toBe('hold')
  })

  test('exposed without who, when and a photo is said', () => {
    expect(codesOf(lines({ evidence: 'exposed', exposed: { by: 'Ana', on: '2026-11-24' } }))).toContain(
      'exposed-without-record',
    )
    expect(
      codesOf(
        lines({
          evidence: 'exposed',
          exposed: { by: 'Ana', on: '2026-11-24', photo: 'IMG 0412' },
        }),
      ),
    ).not.toContain('exposed-without-record')
  })

  test('one beyond the bore is refused with its place', () => {
    const beyond = (change: CrossingDocument) => {
      const parsed = parseCrossing(lines(change))
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues))
      const plan = planCrossing(parsed.value)
      return plan.ok ? [] : plan.issues.map(({ path, code }) => `${path} ${code}`)
    }
    expect(beyond({ station: '400 ft' })).toContain('utilities.0.station stretch-outside-line')
    expect(beyond({ from: '2 ft', to: '400 ft' })).toContain('utilities.0.to stretch-outside-line')
    expect(beyond({ from: '9 ft', to: '2 ft' })).toContain('utilities.0 inputs-conflict')
  })

  test('a quality level its standard does not have is refused', () => {
    const parsed = parseCrossing(lines({ quality: { scheme: 'asce-38', level: 'B1' } }))
    expect(!parsed.ok && parsed.issues[0]).toMatchObject({
      path: 'utilities.0.quality.level',
      accepted: 'A, B, C, D',
    })
    expect(parseCrossing(lines({ quality: { scheme: 'pas-128', level: 'B1' } })).ok).toBe(true)
  })
})
