import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type GateAnswer,
  type GateFacts,
  type PlanHold,
  releaseGate,
  type SignOff,
  STALE_AFTER_MINUTES,
} from '../../../shared/core/digsafe/release-gate.ts'
import { maySetAside } from '../../../shared/core/digsafe/release-points.ts'
import { REOPEN_CAUSES, SIGN_ITEMS, SIGN_LAYERS } from '../../../shared/core/digsafe/sign-off-items.ts'

const DAY = 1440
const MORNING = 20_000 * DAY + 7 * 60
const NOON = 20_000 * DAY + 12 * 60
const PLAN = 'a'.repeat(64)

const sign = (layer: SignOff['layer'], change: Partial<SignOff> = {}): SignOff => ({
  layer,
  atMinute: MORNING,
  by: 'Ada Crew',
  bore: layer === 'bore' ? 1 : null,
  items: SIGN_ITEMS.filter((each) => each.layer === layer).map((each) => each.id),
  photos: SIGN_ITEMS.filter((each) => each.layer === layer && each.needsPhoto).map((each) => each.id),
  plan: layer === 'bore' ? PLAN : null,
  watchers: layer === 'bore' ? ['Bo', 'Cy', 'Di'] : [],
  why: null,
  setAside: null,
  ...change,
})
const ALL = [sign('site', { atMinute: MORNING - 3 * DAY }), sign('day'), sign('bore')]
const GOOD: GateFacts = {
  nowMinute: NOON,
  where: 'site',
  asOfMinute: NOON - 30,
  bore: 1,
  plan: PLAN,
  ticket: { startsMinute: MORNING - DAY, expiresMinute: NOON + 9 * DAY },
  holds: [],
  hasLines: true,
  hasProved: true,
  watchersNeeded: 3,
  signOffs: ALL,
}
const gate = (change: Partial<GateFacts>): GateAnswer => releaseGate({ ...GOOD, ...change })
const openAt = (answer: GateAnswer, point: number) =>
  answer.points.find((each) => each.point === point)?.open.map((each) => `${each.code} ${each.of}`)

describe('ready', () => {
  test('when every point is answered, on site, today, for this bore, by this plan', () => {
    expect(gate({}).status).toBe('ready')
    expect(gate({}).points.map((each) => each.state)).toEqual(Array.from({ length: 11 }, () => 'pass'))
  })
  test('ends at midnight, at expiry, or when what is known here is too old', () => {
    expect(gate({}).untilMinute).toBe(NOON - 30 + STALE_AFTER_MINUTES)
    expect(gate({ asOfMinute: NOON, nowMinute: NOON + 300 }).untilMinute).toBe(NOON + STALE_AFTER_MINUTES)
    const late = { nowMinute: NOON + 11 * 60, asOfMinute: NOON + 11 * 60 }
    expect(gate(late).untilMinute).toBe(20_001 * DAY)
    expect(gate({ ticket: { startsMinute: 0, expiresMinute: NOON + 5 } }).untilMinute).toBe(NOON + 5)
  })
  test('is never said elsewhere, nor by a stale phone: check', () => {
    expect(gate({ where: 'elsewhere' })).toMatchObject({ status: 'check', why: 'elsewhere' })
    expect(gate({ asOfMinute: null })).toMatchObject({ status: 'check', why: 'stale' })
    expect(gate({ asOfMinute: NOON - STALE_AFTER_MINUTES })).toMatchObject({ status: 'check', why: 'stale' })
  })
})

describe('ends', () => {
  test('at midnight', () => {
    const tomorrow = NOON + DAY
    expect(gate({ nowMinute: tomorrow, asOfMinute: tomorrow }).status).toBe('hold')
  })
  test('when the ticket does, and before it begins', () => {
    expect(openAt(gate({ ticket: { startsMinute: 0, expiresMinute: NOON } }), 1)).toEqual([
      'ticket-over ticket',
    ])
    const later = gate({ ticket: { startsMinute: NOON + 1, expiresMinute: NOON + DAY } })
    expect(openAt(later, 1)).toEqual(['ticket-not-yet ticket'])
    expect(gate({ ticket: null }).status).toBe('hold')
  })
  test.each(REOPEN_CAUSES)('after %s, until it is signed again', (why) => {
    const event = sign('reopen', { why, items: [], atMinute: MORNING + 60 })
    const ended = gate({ signOffs: [...ALL, event] })
    expect(ended.status).toBe('hold')
    expect(openAt(ended, 7)).toContain('not-signed pits-inspected')
    expect(openAt(ended, 3)).toContain('not-signed marks-and-white-line')
    const again = (['site', 'day', 'bore'] as const).map((layer) => sign(layer, { atMinute: MORNING + 61 }))
    expect(gate({ signOffs: [...ALL, event, ...again] }).status).toBe('ready')
  })
  test('with another version of the plan, and for another bore', () => {
    expect(gate({ plan: 'b'.repeat(64) }).status).toBe('hold')
    expect(gate({ bore: 2 }).status).toBe('hold')
  })
})

describe('each signature answers its own points', () => {
  test.each(SIGN_ITEMS.map((each) => [each.id, each] as const))('%s', (id, item) => {
    const without = ALL.map((each) => ({ ...each, items: each.items.filter((other) => other !== id) }))
    const answer = gate({ signOffs: without })
    expect(answer.status).toBe('hold')
    expect(answer.points.filter((each) => each.state === 'hold').map((each) => each.point)).toEqual([
      item.point,
    ])
    if (!item.needsPhoto) return
    const blind = ALL.map((each) => ({ ...each, photos: each.photos.filter((other) => other !== id) }))
    expect(openAt(gate({ signOffs: blind }), item.point)).toEqual([`no-photo ${id}`])
  })
  test('about seven a bore, six a day, photos on three', () => {
    const count = (layer: string) => SIGN_ITEMS.filter((each) => each.layer === layer).length
    expect(SIGN_LAYERS.map(count)).toEqual([6, 4, 8])
    expect(SIGN_ITEMS.filter((each) => each.layer === 'bore' && each.when !== 'proved')).toHaveLength(7)
    expect(SIGN_ITEMS.filter((each) => each.needsPhoto)).toHaveLength(3)
    expect(new Set(SIGN_ITEMS.map((each) => each.id)).size).toBe(SIGN_ITEMS.length)
  })
  test('watchers are counted: needs 3', () => {
    const two = sign('bore', { watchers: ['Bo', 'bo ', 'Cy'] })
    const answer = gate({ signOffs: [sign('site'), sign('day'), two] })
    expect(answer.watchers).toEqual({ needed: 3, named: 2 })
    expect(openAt(answer, 5)).toEqual(['watchers-short watchers-named'])
  })
})

describe('a rule set aside', () => {
  const hold: PlanHold = { code: 'clearance-short', line: 2, kind: 'water' }
  const aside = (change: Partial<NonNullable<SignOff['setAside']>> = {}) =>
    sign('bore', {
      items: [],
      setAside: {
        code: 'clearance-short',
        line: 2,
        reason: 'owner on site, hand dug to it',
        second: 'Eve Owner',
        ...change,
      },
    })
  test('takes two people, names, a reason, and is counted', () => {
    expect(gate({ holds: [hold] }).status).toBe('hold')
    const answer = gate({ holds: [hold], signOffs: [...ALL, aside()] })
    expect(answer).toMatchObject({ status: 'ready', setAside: 1 })
    expect(answer.points[5]).toMatchObject({ point: 6, state: 'set-aside' })
    for (const change of [
      { second: ' ada  crew ' },
      { second: '' },
      { reason: 'ok' },
      { line: 1 },
      { line: null },
    ]) {
      expect(gate({ holds: [hold], signOffs: [...ALL, aside(change)] }).status, JSON.stringify(change)).toBe(
        'hold',
      )
    }
  })
  test('never a ticket, an answer, what is not asked, or gas and electric unseen', () => {
    const never: readonly PlanHold[] = [
      { code: 'no-ticket', line: null, kind: null },
      { code: 'owner-silent', line: null, kind: null },
      { code: 'lines-not-asked', line: null, kind: null },
      { code: 'line-not-exposed', line: 1, kind: 'gas' },
      { code: 'line-not-exposed', line: 1, kind: 'electric' },
      { code: 'parallel-not-exposed', line: 1, kind: 'other' },
      { code: 'over-rated-pressure', line: null, kind: null },
      { code: 'a-rule-nobody-has-heard-of', line: null, kind: null },
    ]
    for (const each of never) {
      const signOffs = [...ALL, aside({ code: each.code, line: each.line })]
      expect(gate({ holds: [each], signOffs }).status, each.code).toBe('hold')
    }
    expect(maySetAside('line-not-exposed', 'water')).toBe(true)
    expect(maySetAside('line-not-exposed', null)).toBe(false)
  })
  test('a rule under none of the points holds as well', () => {
    const answer = gate({ holds: [{ code: 'cover-too-small', line: null, kind: 'road' }] })
    expect(answer.status).toBe('hold')
    expect(answer.others.map((each) => each.of)).toEqual(['cover-too-small'])
  })
})

test('what was crossed counts as looked at only with a name, after the fact', () => {
  expect(gate({}).after).toBeNull()
  const looked = sign('after', { by: 'Sewer Camera Co', atMinute: NOON - 1 })
  expect(gate({ signOffs: [...ALL, looked] }).after).toEqual({ by: 'Sewer Camera Co', atMinute: NOON - 1 })
  expect(gate({ signOffs: [...ALL, { ...looked, atMinute: NOON + 1 }] }).after).toBeNull()
})

/** Hold is worst. */
const RANK = { hold: 0, check: 1, ready: 2 }
const rank = (facts: GateFacts): number => RANK[releaseGate(facts).status]
const holds = fc.array(
  fc.record({
    code: fc.constantFrom(
      'clearance-short',
      'line-not-exposed',
      'no-ticket',
      'owner-silent',
      'cover-too-small',
    ),
    line: fc.constantFrom(null, 1, 2),
    kind: fc.constantFrom('gas', 'water', null),
  }),
  { maxLength: 2 },
)
const anySign = fc
  .record({
    layer: fc.constantFrom('day', 'site', 'bore', 'reopen', 'after'),
    ago: fc.integer({ min: 0, max: 2 * DAY }),
    skip: fc.constantFrom('', ...SIGN_ITEMS.map((each) => each.id)),
    by: fc.constantFrom('Ada', 'Bo', ''),
    plan: fc.constantFrom(PLAN, 'old'),
    aside: fc.constantFrom(null, 'clearance-short', 'line-not-exposed', 'cover-too-small'),
    why: fc.constantFrom(...REOPEN_CAUSES),
  })
  .map(({ layer, ago, skip, by, plan, aside, why }): SignOff => {
    const whole = sign(layer, { atMinute: NOON - ago, by, why: layer === 'reopen' ? why : null })
    const setAside = aside === null ? null : { code: aside, line: 1, reason: 'said so on site', second: 'Cy' }
    return {
      ...whole,
      plan: layer === 'bore' ? plan : null,
      items: whole.items.filter((each) => each !== skip),
      setAside: layer === 'bore' ? setAside : null,
    }
  })
const anyFacts = fc
  .record({
    holds,
    signs: fc.array(anySign, { maxLength: 6 }),
    isWhole: fc.boolean(),
    watchersNeeded: fc.integer({ min: 0, max: 4 }),
    asOf: fc.integer({ min: 0, max: 900 }),
  })
  .map(
    ({ signs, isWhole, asOf, ...rest }): GateFacts => ({
      ...GOOD,
      ...rest,
      asOfMinute: NOON - asOf,
      signOffs: isWhole ? [...ALL, ...signs] : signs,
    }),
  )

describe('whatever happens', () => {
  test('a line, a rule or a doubt more never improves it', () => {
    fc.assert(
      fc.property(anyFacts, holds, (facts, more) => {
        expect(rank({ ...facts, holds: [...facts.holds, ...more] })).toBeLessThanOrEqual(rank(facts))
        expect(rank({ ...facts, watchersNeeded: facts.watchersNeeded + 1 })).toBeLessThanOrEqual(rank(facts))
        expect(rank({ ...facts, hasLines: true, hasProved: true })).toBeLessThanOrEqual(rank(facts))
      }),
    )
  })
  test('a signature or a photo taken away never improves it, unless it said that something happened', () => {
    fc.assert(
      fc.property(anyFacts, fc.nat(8), (facts, place) => {
        const gone = facts.signOffs[place]
        if (gone === undefined || gone.layer === 'reopen') return
        const left = facts.signOffs.filter((each) => each !== gone)
        expect(rank({ ...facts, signOffs: left })).toBeLessThanOrEqual(rank(facts))
        const blind = facts.signOffs.map((each) => (each === gone ? { ...each, photos: [] } : each))
        expect(rank({ ...facts, signOffs: blind })).toBeLessThanOrEqual(rank(facts))
      }),
    )
  })
  test('something that happened never improves it', () => {
    fc.assert(
      fc.property(anyFacts, fc.constantFrom(...REOPEN_CAUSES), fc.nat(DAY), (facts, why, ago) => {
        const event = sign('reopen', { why, items: [], atMinute: NOON - ago })
        expect(rank({ ...facts, signOffs: [...facts.signOffs, event] })).toBeLessThanOrEqual(rank(facts))
      }),
    )
  })
  test('time that passes never improves it', () => {
    const ticket = fc.record({
      startsMinute: fc.integer({ min: NOON - 3 * DAY, max: NOON + DAY }),
      expiresMinute: fc.integer({ min: NOON - DAY, max: NOON + 3 * DAY }),
    })
    fc.assert(
      fc.property(anyFacts, fc.option(ticket), fc.nat(3 * DAY), (facts, printed, later) => {
        const now = { ...facts, ticket: printed }
        expect(rank({ ...now, nowMinute: NOON + later })).toBeLessThanOrEqual(rank(now))
      }),
    )
  })
  test('leaving the site or losing touch never improves it', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        expect(rank({ ...facts, where: 'elsewhere' })).toBeLessThanOrEqual(Math.min(1, rank(facts)))
        expect(rank({ ...facts, asOfMinute: null })).toBeLessThanOrEqual(Math.min(1, rank(facts)))
      }),
    )
  })
})
