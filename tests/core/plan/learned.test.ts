import { describe, expect, test } from 'vitest'
import { parseCrossing } from '../../../shared/contracts/crossing.ts'
import { PRIOR_SPREAD } from '../../../shared/core/ground/rate-effects.ts'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import { A_CROSSING } from '../../cli/run-in-process.ts'
import { DEMO_NAMES, inputOf, planOf, planOfDemo } from '../../support/crossings.ts'

const before = planOf(A_CROSSING)
const withBores = (...pastBores: object[]) => planOf({ ...A_CROSSING, pastBores })
const bore = (change: object = {}) => ({ family: 'clay', length: '20 ft', hammerTime: '20 min', ...change })
const width = (plan: typeof before): number => {
  const time = plan.run.hammerTimeS
  if (time === null) throw new Error('no times')
  return Math.log(time.p90 / time.p10)
}

describe('what past bores teach a plan', () => {
  test.each(DEMO_NAMES)('%s: a figure that says nothing changes nothing', (name) => {
    const families = ['clay', 'frictional', 'sand']
    const learned = families.map((family) => ({ family, multiplier: 1, spread: PRIOR_SPREAD, bores: 1 }))
    expect(planOfDemo(name, { learned }).run).toEqual(planOfDemo(name).run)
  })

  test('slower bores make a slower plan, with scope and count beside it', () => {
    const after = withBores(bore(), bore(), bore({ stalled: true, excluded: true }))
    const part = after.learned?.[0]
    expect(part).toMatchObject({ family: 'clay', bores: 2, stalled: 0, excluded: 1, from: 'bores' })
    expect(part?.multiplier).toBeLessThan(1)
    expect(after.run.advanceMPerS.p50).toBeLessThan(before.run.advanceMPerS.p50)
  })

  test('the ratio of one bore by hand: m = y τ²/(τ² + σ²)', () => {
    // The model's own pace at the pressure of the blow, off the plan with nothing learned.
    const still = { ...A_CROSSING, tool: { diameter: '2.5 in', blowEnergy: '40 J', ratedPressure: '90 psi' } }
    const plain = planOf(still)
    const stretch = plain.shots[0]?.stretches[0]
    const gaugePa = plain.air.toolGaugePa
    const after = planOf({ ...still, pastBores: [bore({ pressure: `${gaugePa / 1e5} bar` })] })
    const y = Math.log((20 * 0.3048) / 1200 / (stretch?.advanceMPerS ?? 0))
    const mean = (y * 0.43 ** 2) / (0.43 ** 2 + 0.35 ** 2)
    expect(after.learned?.[0]?.multiplier).toBeCloseTo(Math.exp(mean), 9)
  })

  test('every bore that is taken in narrows the band; one left out changes nothing', () => {
    const bores = Array.from({ length: 8 }, () => bore({ hammerTime: '8 min' }))
    const widths = [0, 1, 3, 8].map((count) => width(withBores(...bores.slice(0, count))))
    expect(widths).toEqual([...widths].sort((a, b) => b - a))
    expect(withBores(bore({ excluded: true })).run).toEqual(before.run)
  })

  test('a stall slows, and is no reading of nothing', () => {
    const one = withBores(bore()).learned?.[0]?.multiplier ?? 0
    expect(withBores(bore(), bore({ stalled: true })).learned?.[0]?.multiplier).toBeLessThan(one)
  })

  test('bores in other ground say nothing of this', () => {
    const after = withBores(bore({ family: 'sand' }))
    expect(after.learned).toBeUndefined()
    expect(after.run).toEqual(before.run)
  })

  test('with every spread at zero the draws still give the one run', () => {
    const input = inputOf({ ...A_CROSSING, pastBores: [bore()] })
    const plan = planCrossing(input, { spreadScale: 0 })
    if (!plan.ok) throw new Error('refused')
    const { advanceMPerS } = plan.value.run
    const stretch = plan.value.shots[0]?.stretches[0]?.advanceMPerS ?? 0
    expect(Math.abs(advanceMPerS.p50 / stretch - 1)).toBeLessThan(1e-12)
  })

  test('a bore without its time, and a family said twice, are refused by path', () => {
    const paths = (change: object) => {
      const parsed = parseCrossing({ ...A_CROSSING, ...change })
      return parsed.ok ? [] : parsed.issues.map(({ path }) => path)
    }
    expect(paths({ pastBores: [{ family: 'clay', length: '20 ft' }] })).toEqual(['pastBores.0.hammerTime'])
    expect(paths({ pastBores: [{ family: 'clay', stalled: true }] })).toEqual([])
    const said = { family: 'clay', multiplier: 1, spread: 0.2, bores: 3 }
    expect(paths({ learned: [said, said] })).toEqual(['learned.1.family'])
  })
})
