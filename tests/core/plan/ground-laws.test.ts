import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parseCrossing } from '../../../shared/contracts/crossing.ts'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import { A_CROSSING } from '../../cli/run-in-process.ts'
import { DEMO_NAMES, demoDocument, planOf } from '../../support/crossings.ts'
import '../../support/one-seed.ts'

const withGround = (...ground: object[]) => ({ ...A_CROSSING, ground })
const near = (a: number, b: number) => expect(Math.abs(a / b - 1)).toBeLessThan(1e-9)

describe('cutting a stretch in two changes nothing', () => {
  test.each(DEMO_NAMES)('%s', (name) => {
    const document = demoDocument(name)
    const ground = Array.isArray(document.ground) ? document.ground : []
    const before = planOf(document)
    // Inside the last stretch, which has an open end or one the file gives.
    const last = ground.at(-1)
    const cut = `${before.bore.lengthM * 0.97} m`
    const after = planOf({
      ...document,
      ground: [...ground.slice(0, -1), { ...last, to: cut }, { ...last, from: cut }],
    })
    near(after.run.advanceMPerS.p50, before.run.advanceMPerS.p50)
    near(after.run.advanceMPerS.p90, before.run.advanceMPerS.p90)
    near(after.run.arrivalProbability, before.run.arrivalProbability)
    near(after.deviation.lateralM.p90, before.deviation.lateralM.p90)
    expect(after.cautions).toEqual(before.cautions)
  })
})

test('stronger ground is never faster while the tool grips', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 4, max: 60, noNaN: true }),
      fc.double({ min: 1.05, max: 2 }),
      (n, harder) => {
        const median = (sptN: number) => planOf(withGround({ uscs: 'CL', sptN })).shots[0]?.stretches[0]
        const soft = median(n)
        const hard = median(Math.min(100, n * harder))
        if (soft?.buriedToGripM === null || hard?.buriedToGripM === null) return
        expect(hard?.advanceMPerS ?? 0).toBeLessThanOrEqual((soft?.advanceMPerS ?? 0) * (1 + 1e-12))
      },
    ),
    { numRuns: 20 },
  )
})

test('the peak of the heave falls with depth in clay', () => {
  const heave = [2, 3, 4, 6, 9].map((ft) => {
    const depth = { launch: `${ft} ft`, reception: `${ft} ft`, to: 'centre' }
    return planOf({ ...withGround({ uscs: 'CL', sptN: 9 }), depth }).ground.heaveM
  })
  for (const quantile of ['p10', 'p50', 'p90'] as const) {
    const peaks = heave.map((each) => each[quantile])
    expect(peaks).toEqual([...peaks].sort((a, b) => b - a))
  }
})

describe('bad input', () => {
  const pathsOf = (...ground: object[]): readonly string[] => {
    const parsed = parseCrossing(withGround(...ground))
    if (!parsed.ok) return parsed.issues.map(({ path }) => path)
    const plan = planCrossing(parsed.value)
    return plan.ok ? [] : plan.issues.map(({ path }) => path)
  }

  test.each([
    ['N 300', [{ uscs: 'CL', sptN: 300 }], 'ground.0.sptN'],
    ['φ 70°', [{ uscs: 'SP', frictionAngle: '70 deg' }], 'ground.0.frictionAngle'],
    ['water above the ground', [{ uscs: 'SP', sptN: 10, waterTable: '-1 ft' }], 'ground.0.waterTable'],
    [
      'a gap',
      [
        { uscs: 'CL', to: '10 ft' },
        { uscs: 'CL', from: '20 ft' },
      ],
      'ground.1.from',
    ],
    [
      'an overlap',
      [
        { uscs: 'CL', to: '20 ft' },
        { uscs: 'CL', from: '10 ft' },
      ],
      'ground.1.from',
    ],
    ['an open end', [{ uscs: 'CL', to: '10 ft' }], 'ground.0.to'],
    ['a vane of a rock', [{ uscs: 'CL', vane: '900 MPa' }], 'ground.0.vane'],
  ])('%s is refused by path', (_name, ground, path) => {
    expect(pathsOf(...ground)).toEqual([path])
  })

  test('many stones and cobbles are never routine', () => {
    const odds = ['none', 'few', 'many', 'cobbles'].map((stones) =>
      planOf(withGround({ uscs: 'CL', sptN: 9, stones })),
    )
    const arrivals = odds.map(({ run }) => run.arrivalProbability)
    expect(arrivals).toEqual([...arrivals].sort((a, b) => b - a))
    expect(arrivals[2]).toBeLessThan(0.9)
    expect(arrivals[3]).toBeLessThan(0.5)
    const codes = odds.map(({ release }) => release.reasons.map(({ code }) => code))
    expect(codes[2]).toContain('may-not-arrive')
    expect(codes[3]).toContain('ground-outside-model')
  })
})
