import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evaluateRelation, parseRelationRequest } from '../../shared/contracts/relation-request.ts'
import { PreconditionError } from '../../shared/core/outcome.ts'
import { relation } from '../../shared/core/relation.ts'

const boxVolume = relation({
  id: 'box-volume',
  title: 'Volume of a box',
  formula: 'V = l w h',
  sources: ['ExactIdentity'],
  inputs: {
    length: { kind: 'length', words: 'length', range: { hardMin: 0, max: 10 } },
    width: { kind: 'length', words: 'width', range: { hardMin: 0, hardMax: 100 } },
    height: { kind: 'depth', words: 'height', default: 2 },
    shape: { choices: ['box', 'wedge'], words: 'shape', default: 'box' },
  },
  outputs: { volume: { kind: 'volume', words: 'volume' } },
  fn: ({ lengthM, widthM, heightM, shape }) => ({
    volumeM3: lengthM * widthM * heightM * (shape === 'box' ? 1 : 0.5),
  }),
  checks: [],
})
const oddities = relation({
  id: 'oddities',
  title: 'Lists, places and words',
  formula: 'n',
  sources: ['ExactIdentity'],
  inputs: {
    failures: { list: 'numbers', words: 'times' },
    launch: { position: true, words: 'launch' },
    size: { word: true, words: 'size' },
  },
  outputs: { total: { kind: 'count', words: 'sum' } },
  fn: ({ failures, launch, size }) => ({
    total: failures.reduce((sum, each) => sum + each, launch[0] + size.length),
  }),
  checks: [],
})
const oneOver = relation({
  id: 'one-over',
  title: 'One over x',
  formula: '1/x',
  sources: ['ExactIdentity'],
  inputs: { x: { kind: 'ratio', words: 'x' } },
  outputs: { y: { kind: 'ratio', words: 'y' } },
  fn: ({ x }) => {
    if (x < 0) throw new PreconditionError('x is negative')
    return { y: 1 / x }
  },
  checks: [],
})

const codes = (outcome: ReturnType<typeof parseRelationRequest>) =>
  outcome.ok ? [] : outcome.issues.map((each) => `${each.path}: ${each.code}`)

describe('a request for a relation', () => {
  it('is read into SI, with what was not given named', () => {
    expect(parseRelationRequest(boxVolume, { length: '10 ft', width: '12 in' })).toEqual({
      ok: true,
      value: {
        inputs: { lengthM: 3.048, widthM: 0.3048, heightM: 2, shape: 'box' },
        defaulted: ['height', 'shape'],
      },
    })
  })

  it('tells all problems at once, with the nearest key and choice', () => {
    const outcome = parseRelationRequest(boxVolume, { lenght: '10 ft', width: '42', shape: 'wegde' })
    expect(codes(outcome)).toEqual([
      'lenght: unknown-key',
      'length: required',
      'width: ask',
      'shape: unknown-choice',
    ])
    if (outcome.ok) return
    expect(outcome.issues[0]?.candidates).toEqual([{ value: 'length', means: 'length' }])
    expect(outcome.issues[3]?.candidates).toEqual([{ value: 'wedge', means: 'wedge' }])
  })

  it('refuses what is physically impossible, and null, and inherited names', () => {
    const outcome = parseRelationRequest(boxVolume, {
      length: '-1 m',
      width: '101 m',
      height: null,
      toString: '1 m',
    })
    expect(codes(outcome)).toEqual([
      'toString: unknown-key',
      'length: out-of-range',
      'width: out-of-range',
      'height: wrong-type',
    ])
    expect(codes(parseRelationRequest(boxVolume, {}))).toEqual(['length: required', 'width: required'])
  })

  it('takes lists, places and words', () => {
    const wanted = { failures: [17.88, 28.92], launch: [-78.1, 38.2], size: '3/4' }
    const typed = parseRelationRequest(oddities, {
      failures: '17.88, 28.92',
      launch: '-78.1,38.2',
      size: '3/4',
    })
    const sent = parseRelationRequest(oddities, {
      failures: [17.88, '28.92'],
      launch: [-78.1, 38.2],
      size: '3/4',
    })
    expect(typed).toEqual({ ok: true, value: { inputs: wanted, defaulted: [] } })
    expect(sent).toEqual(typed)
  })

  it.each([
    [{ failures: '1,x,3', launch: '0,0', size: 'a' }, ['failures.1: not-a-quantity']],
    [{ failures: '', launch: '0,0', size: 'a' }, ['failures: required']],
    [{ failures: 'NaN', launch: '0,0', size: 'a' }, ['failures.0: not-a-quantity']],
    [
      { failures: {}, launch: '0', size: {} },
      ['failures: wrong-type', 'launch: wrong-type', 'size: wrong-type'],
    ],
    [{ failures: '1', launch: '38.2,-178.1', size: 'a' }, ['launch: out-of-range']],
    [{ failures: '1', launch: '-78.1,38.2,100', size: 'a' }, ['launch: wrong-type']],
    [{ failures: '1', launch: '0,0', size: 'x'.repeat(5000) }, ['size: too-long']],
  ])('%j is refused', (given, wanted) => expect(codes(parseRelationRequest(oddities, given))).toEqual(wanted))

  it('offers latitude and longitude the other way round', () => {
    const outcome = parseRelationRequest(oddities, { failures: '1', launch: '38.2,-178.1', size: 'a' })
    expect(outcome.ok ? [] : outcome.issues[0]?.candidates).toEqual([
      { value: '-178.1,38.2', means: 'longitude,latitude' },
    ])
  })

  it('names at most 50 problems', () => {
    const given = Object.fromEntries(Array.from({ length: 400 }, (_, index) => [`key${index}`, 1]))
    expect(codes(parseRelationRequest(boxVolume, given))).toHaveLength(50)
  })

  it('never throws at what a stranger sends', () => {
    fc.assert(
      fc.property(
        fc.dictionary(
          fc.constantFrom('length', 'width', 'failures', 'launch', 'size', '__proto__', 'x'),
          fc.anything(),
        ),
        (given) => {
          for (const each of [boxVolume, oddities, oneOver])
            expect(typeof evaluateRelation(each, given).ok).toBe('boolean')
        },
      ),
      { seed: 52026, numRuns: 500 },
    )
  })
})

describe('a relation worked out', () => {
  it('answers with outputs, notes outside the range, and sources', () => {
    expect(evaluateRelation(boxVolume, { length: '20 m', width: '1 m' })).toEqual({
      ok: true,
      value: {
        id: 'box-volume',
        inputs: { lengthM: 20, widthM: 1, heightM: 2, shape: 'box' },
        outputs: { volumeM3: 40 },
        defaulted: ['height', 'shape'],
        notes: [{ code: 'outside-range', input: 'lengthM', value: 20, min: null, max: 10 }],
        sources: ['ExactIdentity'],
      },
    })
  })

  it('refuses where there is no answer', () => {
    expect(evaluateRelation(oneOver, { x: '0' })).toMatchObject({
      ok: false,
      issues: [{ path: 'y', code: 'no-convergence' }],
    })
    expect(evaluateRelation(oneOver, { x: '-1' })).toMatchObject({
      ok: false,
      issues: [{ code: 'out-of-range' }],
    })
  })
})
