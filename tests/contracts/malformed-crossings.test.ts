import fc from 'fast-check'
import { expect, test } from 'vitest'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import type { Issue } from '../../shared/core/outcome.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'
import { DEMO_NAMES, demoDocument } from '../support/crossings.ts'

const SEED = 20261124
const RUNS = 2000

type Json = null | boolean | number | string | Json[] | { [key: string]: Json }
type Step = string | number

/** Every place of a document, as paths. */
function places(value: Json, at: Step[] = []): Step[][] {
  const here = at.length === 0 ? [] : [at]
  if (Array.isArray(value))
    return [...here, ...value.flatMap((inner, index) => places(inner, [...at, index]))]
  if (value !== null && typeof value === 'object') {
    return [...here, ...Object.entries(value).flatMap(([key, inner]) => places(inner, [...at, key]))]
  }
  return here
}

function changed(
  document: Json,
  path: readonly Step[],
  how: (holder: Record<Step, Json>, last: Step) => void,
): Json {
  const copy = structuredClone(document)
  let at: Json = copy
  for (const step of path.slice(0, -1)) at = (at as Record<Step, Json>)[step] as Json
  how(at as Record<Step, Json>, path.at(-1) as Step)
  return copy
}

const junk: fc.Arbitrary<Json> = fc.oneof(
  fc.constantFrom<Json>(
    null,
    true,
    false,
    [],
    {},
    '',
    ' ',
    '-',
    '1e999',
    'NaN',
    'Infinity',
    '4,2 m',
    '12',
    '-5 ft',
    '0 m',
  ),
  fc.constantFrom<Json>(
    '9'.repeat(400),
    '42 parsecs',
    '3 psi',
    '2 kg',
    '11/4',
    '1/0 in',
    '\u0000',
    '💥 ft',
    '__proto__',
    [[[]]],
  ),
  fc.double() as fc.Arbitrary<Json>,
  fc.string({ unit: 'binary', maxLength: 80 }) as fc.Arbitrary<Json>,
  fc.jsonValue({ maxDepth: 3 }) as fc.Arbitrary<Json>,
)

function sound(issues: readonly Issue[]): void {
  expect(issues.length).toBeGreaterThan(0)
  expect(issues.length).toBeLessThanOrEqual(50)
  for (const issue of issues) {
    expect(typeof issue.path).toBe('string')
    expect(issue.code.length).toBeGreaterThan(0)
  }
}

test(`${RUNS} malformed crossing files are refused with a path or planned, never a throw (seed ${SEED})`, () => {
  let refused = 0
  let named = 0
  fc.assert(
    fc.property(
      fc.constantFrom(...DEMO_NAMES),
      fc.nat(),
      fc.nat({ max: 4 }),
      junk,
      fc.string({ maxLength: 20 }),
      (name, place, kind, value, key) => {
        const document = demoDocument(name) as Json
        const all = places(document)
        const path = all[place % all.length] as Step[]
        const bad = changed(document, path, (holder, last) => {
          if (kind === 0) delete holder[last]
          else if (kind === 1 && !Array.isArray(holder)) holder[key] = value
          else if (kind === 2) holder[last] = [value, value]
          else if (kind === 3) holder[last] = { [key]: value }
          else holder[last] = value
        })
        const parsed = parseCrossing(bad)
        if (!parsed.ok) {
          refused++
          if (parsed.issues.some((issue) => issue.path !== '')) named++
          return sound(parsed.issues)
        }
        const plan = planCrossing(parsed.value)
        if (!plan.ok) sound(plan.issues)
      },
    ),
    { seed: SEED, numRuns: RUNS },
  )
  // A fuzz that refused nothing would have tested nothing.
  expect(refused).toBeGreaterThan(RUNS / 2)
  expect(named / refused).toBeGreaterThan(0.95)
})

test.each([null, 42, 'crossing', [], [1], true])('%j is not a crossing', (given) => {
  const parsed = parseCrossing(given)
  expect(parsed.ok).toBe(false)
  if (!parsed.ok) sound(parsed.issues)
})

const issuesOf = (change: Record<string, unknown>): string[] => {
  const parsed = parseCrossing({ ...demoDocument('firm-clay-service'), ...change })
  if (!parsed.ok) return parsed.issues.map((issue) => `${issue.path} ${issue.code}`)
  const plan = planCrossing(parsed.value)
  return plan.ok ? [] : plan.issues.map((issue) => `${issue.path} ${issue.code}`)
}

test('an unknown key is named with the nearest known one', () => {
  const parsed = parseCrossing({ ...demoDocument('firm-clay-service'), utilites: [] })
  expect(parsed.ok).toBe(false)
  if (!parsed.ok) {
    expect(parsed.issues[0]).toMatchObject({ path: 'utilites', code: 'unknown-key' })
    expect(parsed.issues[0]?.candidates?.[0]?.value).toBe('utilities')
  }
})

test('all problems come at once', () => {
  expect(
    issuesOf({
      line: { length: '42 psi' },
      tool: { diameter: 'big' },
      spread: { draws: 3 },
      ground: [{ word: '' }],
    }),
  ).toEqual(
    expect.arrayContaining([
      'line.length wrong-dimension',
      'tool.diameter not-a-quantity',
      'spread.draws out-of-range',
      'ground.0.word out-of-range',
    ]),
  )
})

test('what has no physical answer is refused with its path', () => {
  expect(issuesOf({ pipes: [{ system: 'hdpe-ips', size: '4 in' }] })).toEqual(['pipes pipe-does-not-pass'])
  expect(issuesOf({ ground: [{ word: 'clay', to: '60 ft' }] })).toEqual(['ground.0.to stretch-outside-line'])
  expect(issuesOf({ ground: [{ word: 'clay', to: '20 ft' }] })).toEqual(['ground.0.to no-ground-here'])
  expect(issuesOf({ ground: [{ word: 'porridge' }] })[0]).toMatch(/^ground\.0\.word unknown-choice/)
  expect(issuesOf({ tool: { id: 'a1', diameter: '2.5 in' } })).toEqual(['tool.id not-available'])
})
