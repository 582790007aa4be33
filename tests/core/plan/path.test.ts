import { describe, expect, test } from 'vitest'
import { parseCrossing } from '../../../shared/contracts/crossing.ts'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import { demoDocument, inputOf, planOfDemo } from '../../support/crossings.ts'

const INCH = 0.0254
const FOOT = 0.3048
const gas = (change: Record<string, unknown> = {}) => ({
  kind: 'gas',
  station: '30 ft',
  depth: '20 in',
  depthTo: 'top',
  diameter: '2 in',
  evidence: 'exposed',
  ...change,
})
const seen = (change: Record<string, unknown> = {}) => ({
  station: '12 ft',
  method: 'seen',
  right: '0 in',
  low: '0 in',
  ...change,
})
const plan = (change: Record<string, unknown>) => planOfDemo('firm-clay-service', change)
const drift = (change: Record<string, unknown>) => plan(change).clearances[0]?.parts.driftM ?? 0

describe('aiming', () => {
  test('out of aim by eye is more than with a frame, and over a short body more than over a long one', () => {
    const p90 = (change: Record<string, unknown>) => plan(change).deviation.lateralM.p90
    const tool = { diameter: '2.5 in' }
    expect(p90({ aim: { method: 'eye' } })).toBeGreaterThan(p90({ aim: { method: 'frame' } }))
    expect(p90({ tool: { ...tool, length: '3 ft' } })).toBeGreaterThan(
      p90({ tool: { ...tool, length: '5 ft' } }),
    )
  })
  test('5 mm over a body of 1.2 m in layered ground: the worked 182.12 mm at 15 m', () => {
    const { deviation } = plan({
      line: { length: '15 m' },
      ground: [{ word: 'clay', stones: 'few' }],
      tool: { diameter: '2.5 in', length: '1.2 m' },
      aim: { error: '5 mm' },
      utilities: [],
      over: [],
    })
    expect((deviation.lateralM.p90 / 1.6448536) * 1000).toBeCloseTo(182.12, 1)
  })
})

test('a bore set out carelessly takes that much more room', () => {
  const parts = (aim: Record<string, unknown>) => plan({ utilities: [gas()], aim }).clearances[0]
  expect(parts({ layout: '2 in' })?.parts.layoutM).toBeCloseTo(2 * INCH, 9)
  expect((parts({ layout: '2 in' })?.requiredM ?? 0) - (parts({})?.requiredM ?? 0)).toBeCloseTo(2 * INCH, 9)
})

describe('a look at the tool', () => {
  test('on line: less drift from there, counted from there', () => {
    const before = drift({ utilities: [gas()] })
    const after = plan({ utilities: [gas()], observations: [seen()] }).clearances[0]
    expect(after?.parts.driftM).toBeLessThan(before)
    expect(after?.driftFrom).toMatchObject({ by: 'seen', stationM: expect.closeTo(12 * FOOT, 9) })
  })
  test('never brings what is required below the standard and the error of the reading', () => {
    for (const method of ['first-metre', 'seen', 'sonde', 'hose-wire']) {
      const look = seen({ method, station: '29 ft 11 in', error: '1 in' })
      const line = plan({ utilities: [gas()], observations: [look] }).clearances[0]
      expect(line?.parts.driftM).toBeGreaterThanOrEqual(1 * INCH)
    }
  })
  test('nearer the line takes room; away from it gives none back', () => {
    const of = (low: string) => drift({ utilities: [gas()], observations: [seen({ low })] })
    // The line lies above the bore: high is towards it.
    expect(of('-2 in')).toBeGreaterThan(of('0 in') + 2 * INCH)
    expect(of('2 in')).toBeGreaterThanOrEqual(of('0 in'))
  })
  test('readings that disagree take more room, and are said', () => {
    const two = (first: string, second: string) => [
      seen({ method: 'sonde', low: first }),
      seen({ method: 'sonde', low: second, station: '13 ft' }),
    ]
    const agree = plan({ utilities: [gas()], observations: two('0 in', '0 in') })
    const not = plan({ utilities: [gas()], observations: two('-6 in', '6 in') })
    expect(not.clearances[0]?.parts.driftM).toBeGreaterThan(agree.clearances[0]?.parts.driftM ?? 0)
    expect(not.shots[0]?.path.wideningVertical).toBeGreaterThan(1.5)
    expect(not.release.reasons.map((each) => each.code)).toContain('readings-disagree')
  })
  test('a tool seen beside it makes an instrument give way', () => {
    const observations = [seen(), seen({ method: 'sonde', low: '8 in', station: '12 ft 6 in' })]
    const { path } = plan({ utilities: [gas()], observations }).shots[0] ?? {}
    expect(path?.observations.map((each) => each.isOverruled)).toEqual([false, true])
    expect(path?.wideningVertical).toBeGreaterThan(1)
  })
  test('each plane by itself: a sound tells left and right, never depth', () => {
    const heard = plan({ observations: [{ station: '20 ft', method: 'ear', right: '4 in' }] })
    expect(heard.deviation.verticalM).toEqual(plan({}).deviation.verticalM)
    expect(heard.deviation.lateralM.p90).not.toBe(plan({}).deviation.lateralM.p90)
    const bad = parseCrossing({
      ...demoDocument('firm-clay-service'),
      observations: [
        { station: '20 ft', method: 'ear', low: '4 in' },
        { station: '3 ft', method: 'pothole' },
      ],
    })
    expect(bad.ok ? [] : bad.issues.map((each) => [each.path, each.code])).toEqual([
      ['observations.0.low', 'inputs-conflict'],
      ['observations.1.right', 'required'],
    ])
  })
  test('begins anew at each pit: what the first bore did says nothing of the second', () => {
    const shots = [{ to: '20 ft' }, { to: '42 ft' }]
    const looked = plan({ shots, observations: [seen({ low: '3 in' })] })
    const not = plan({ shots })
    expect(looked.shots[0]?.deviation).not.toEqual(not.shots[0]?.deviation)
    expect(looked.shots[1]?.deviation).toEqual(not.shots[1]?.deviation)
    expect(looked.shots[1]?.path).toEqual(not.shots[1]?.path)
  })
  test('far out at the first foot: start again', () => {
    const first = (right: string) =>
      plan({ observations: [seen({ method: 'first-meter', station: '3 ft', right })] }).release.reasons
    expect(first('1 in').map((each) => each.code)).toContain('start-again')
    expect(first('1/4 in').map((each) => each.code)).not.toContain('start-again')
  })
  test('beyond the far pit is refused', () => {
    const outcome = planCrossing(
      inputOf({ ...demoDocument('firm-clay-service'), observations: [seen({ station: '60 ft' })] }),
    )
    expect(outcome.ok ? [] : outcome.issues.map((each) => each.path)).toEqual(['observations.0.station'])
  })
  test('a hole the tool has passed unseen gives no credit any more', () => {
    const utilities = [gas({ station: '36 ft' }), gas({ station: '15 ft', depth: '10 in' })]
    const past = plan({ utilities, observations: [seen({ station: '20 ft' })] }).clearances[0]
    expect(past?.driftFrom).toMatchObject({ by: 'seen', stationM: expect.closeTo(20 * FOOT, 9) })
    expect(plan({ utilities }).clearances[0]?.driftFrom).toMatchObject({
      by: 'hole',
      stationM: expect.closeTo(15 * FOOT, 9),
    })
  })
})

describe('a line that slants across', () => {
  test('is met later by a tool that strays, and takes more room', () => {
    const square = drift({ utilities: [gas()] })
    expect(drift({ utilities: [gas({ crossingAngle: '30 deg' })] })).toBeGreaterThan(square)
    expect(drift({ utilities: [gas({ crossingAngle: '150 deg' })] })).toBeGreaterThan(square)
  })
})

describe('ways to get room', () => {
  const short = plan({ utilities: [gas({ depth: '30 in', station: '38 ft' })] })
  test('are named, the best first, and each leaves less short than now', () => {
    expect(short.clearances[0]?.shortM).toBeGreaterThan(0)
    expect(short.proposals.map((each) => each.code)).toContain('other-end')
    expect(short.proposals.map((each) => each.code)).toContain('deeper')
    expect(short.proposals.map((each) => each.code)).toContain('extra-pit')
    for (const each of short.proposals) expect(each.shortAfterM).toBeLessThan(each.shortM)
  })
  test('deeper by what it says leaves nothing short', () => {
    const moveM = short.proposals.find((each) => each.code === 'deeper')?.moveM ?? 0
    const depth = { launch: `${48 * INCH + moveM} m`, reception: `${45 * INCH + moveM} m`, to: 'centre' }
    const after = plan({ depth, utilities: [gas({ depth: '30 in', station: '38 ft' })] })
    expect(after.clearances[0]?.shortM).toBeLessThan(0.001)
  })
  test('the other end as it says: the same crossing entered the other way round', () => {
    const there = short.proposals.find((each) => each.code === 'other-end')
    const back = plan({
      depth: { launch: '45 in', reception: '48 in', to: 'centre' },
      utilities: [gas({ depth: '30 in', station: '4 ft' })],
    })
    expect(back.clearances[0]?.shortM).toBeCloseTo(there?.shortAfterM ?? -1, 9)
  })
  test('the extra pit as it says', () => {
    const pit = short.proposals.find((each) => each.code === 'extra-pit')
    const at = pit?.stationM ?? 0
    const after = plan({
      shots: [{ to: `${at} m` }, { to: '42 ft' }],
      utilities: [gas({ depth: '30 in', station: '38 ft' })],
    })
    expect(Math.max(...after.clearances.map((each) => each.shortM ?? 0))).toBeCloseTo(
      pit?.shortAfterM ?? -1,
      6,
    )
  })
  test('none where nothing is short, nor once the bore is under way', () => {
    expect(plan({ utilities: [gas()] }).proposals).toEqual([])
    const utilities = [gas({ depth: '30 in', station: '38 ft' })]
    expect(plan({ utilities, observations: [seen()] }).proposals).toEqual([])
  })
})

test('what to open up: unknown depth first, then by what is short, then by kind', () => {
  const utilities = [
    gas({ kind: 'water', depth: '20 in', evidence: 'marked', station: '10 ft' }),
    gas({ depth: '20 in', evidence: 'marked', station: '14 ft' }),
    gas({ kind: 'telecom', depth: '38 in', evidence: 'detected', station: '18 ft' }),
    { kind: 'electric', station: '22 ft', evidence: 'records' },
    gas({ station: '26 ft' }),
    gas({ kind: 'sewer', depth: '9 ft', diameter: '8 in', evidence: 'proved' }),
    { kind: 'other', offset: '9 ft', diameter: '2 in', evidence: 'marked' },
  ]
  const { toExpose } = plan({ utilities })
  expect(toExpose.map((each) => each.utility).slice(0, 2)).toEqual([3, 2])
  expect(toExpose.map((each) => each.utility)).toHaveLength(5)
  const [unknown, first] = toExpose
  expect(unknown?.shortM).toBeNull()
  expect(first?.shortM).toBeGreaterThan(0)
  expect(first?.savesM).toBeGreaterThan(0.2)
})

test('a class of evidence that promises a depth sets the error of a line found with a locator; PAS 128 by depth', () => {
  const exposure = (change: Record<string, unknown>) =>
    plan({
      utilities: [gas({ depth: '1 m', depthTo: 'centre', evidence: 'detected', ...change })],
    }).clearances[0]?.parts.exposureM
  const pas = (level: string) => ({ quality: { scheme: 'pas-128', level } })
  expect(exposure(pas('B1'))).toBeCloseTo(0.15, 9)
  expect(exposure(pas('B2'))).toBeCloseTo(0.4, 9)
  expect(exposure({})).toBeCloseTo(0.4, 9)
  expect(exposure({ ...pas('B1'), depth: '1.5 m' })).toBeCloseTo(0.225, 9)
  expect(exposure({ ...pas('B1'), depth: '0.6 m' })).toBeCloseTo(0.15, 9)
  // No class makes a tape in a hole better, and a promise of no depth is none.
  expect(exposure({ ...pas('A'), evidence: 'exposed' })).toBe(0.03)
  expect(exposure(pas('B3'))).toBeCloseTo(0.4, 9)
})

describe('chance of contact', () => {
  const beside = { kind: 'water', offset: '1 ft', diameter: '6 in', depth: '45 in', depthTo: 'centre' }
  const chance = (change: Record<string, unknown>) =>
    plan({ utilities: [{ ...beside, evidence: 'exposed', ...change }] }).clearances[0]
  test('a line alongside has one once it was opened up and measured, and none before', () => {
    expect(chance({})?.contactProbability).toBeGreaterThan(0.01)
    expect(chance({ offset: '9 ft' })?.contactProbability).toBe(0.001)
    expect(chance({ evidence: 'marked' })?.contactProbability).toBeNull()
    expect(chance({ depth: undefined, depthTo: undefined })?.contactProbability).toBeNull()
  })
  test('never below one in a thousand, and it neither makes nor lifts a hold', () => {
    const far = plan({ utilities: [gas({ depth: '5 in' })] })
    expect(far.clearances[0]?.contactProbability).toBe(0.001)
    const short = plan({ utilities: [gas({ depth: '30 in' })] })
    expect(short.clearances[0]?.contactProbability).toBeLessThan(0.05)
    expect(short.release.reasons.map((each) => each.code)).toContain('clearance-short')
  })
})
