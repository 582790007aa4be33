import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import {
  type CrossingDocument,
  DEMO_NAMES,
  demoDocument,
  inputOf,
  planOf,
  planOfDemo,
} from '../../support/crossings.ts'

const SEED = 20261124

describe.each(DEMO_NAMES)('%s', (name) => {
  test('the same file gives the same plan', () => {
    expect(JSON.stringify(planOfDemo(name))).toBe(JSON.stringify(planOfDemo(name)))
  })

  test('every number is finite', () => {
    const walk = (value: unknown, path: string): void => {
      if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true)
      else if (value !== null && typeof value === 'object') {
        for (const [key, inner] of Object.entries(value)) walk(inner, `${path}.${key}`)
      }
    }
    walk(planOfDemo(name), name)
  })

  test('leaving a key out never improves the status', () => {
    const before = planOfDemo(name).release.status
    for (const key of ['utilities', 'locate', 'utilitiesAsked', 'over', 'grade', 'shots', 'rates']) {
      const { [key]: _gone, ...rest } = demoDocument(name)
      const after = planOf(rest).release.status
      expect(after === 'hold' || before === 'check', key).toBe(true)
      if (key === 'utilities' || key === 'locate') expect(after).toBe('hold')
    }
  })

  test('a plan is held or checked, never ready, and its reasons stand rule, missing, advice', () => {
    const { status, reasons } = planOfDemo(name).release
    expect(['hold', 'check']).toContain(status)
    const order = ['rule', 'missing', 'advice']
    const ranks = reasons.map((each) => order.indexOf(each.kind))
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    expect(status === 'hold').toBe(reasons.some((each) => each.kind !== 'advice'))
  })

  test('good day, likely, bad day stand in order', () => {
    const { run, ground } = planOfDemo(name)
    for (const spread of [
      run.advanceMPerS,
      run.hammerTimeS,
      run.boreTimeS,
      run.crossingTimeS,
      ground.heaveM,
    ]) {
      if (spread) expect(spread.p10 <= spread.p50 && spread.p50 <= spread.p90).toBe(true)
    }
    expect(run.arrivalProbability).toBeGreaterThan(0)
    expect(run.arrivalProbability).toBeLessThan(1)
  })

  test('no contact chance for a line nobody exposed, none under 1 in 1,000', () => {
    const lines = (demoDocument(name).utilities ?? []) as { evidence: string }[]
    for (const each of planOfDemo(name).clearances) {
      if (lines[each.utility]?.evidence !== 'exposed') expect(each.contactProbability).toBeNull()
      else expect(each.contactProbability).toBeGreaterThanOrEqual(0.001)
    }
  })

  test('one more stone never improves odds or price', () => {
    const stones = ['none', 'few', 'many', 'cobbles']
    const withStones = (stone: string) => {
      const ground = (demoDocument(name).ground as CrossingDocument[]).map((each) => ({
        ...each,
        stones: stone,
      }))
      return planOfDemo(name, { ground, rates: 'example' })
    }
    const plans = stones.map(withStones)
    for (let index = 1; index < plans.length; index++) {
      const [fewer, more] = [plans[index - 1], plans[index]]
      if (!fewer || !more) throw new Error('a plan is missing')
      expect(more.run.arrivalProbability).toBeLessThanOrEqual(fewer.run.arrivalProbability)
      expect(more.deviation.hitProbability).toBeLessThanOrEqual(fewer.deviation.hitProbability + 1e-12)
      expect(more.price?.p50MinorUnits ?? 0).toBeGreaterThanOrEqual(fewer.price?.p50MinorUnits ?? 0)
      expect(more.price?.p80MinorUnits ?? 0).toBeGreaterThanOrEqual(fewer.price?.p80MinorUnits ?? 0)
    }
  })

  test('with every spread at zero the draws give the deterministic run to 1e-12', () => {
    const input = inputOf(demoDocument(name))
    const plan = planCrossing(input, { spreadScale: 0 })
    if (!plan.ok) throw new Error('no plan')
    for (const shot of plan.value.shots) {
      const stalls = shot.stretches.some(
        (each) => each.setPerBlowM < 0.15e-3 || each.advanceMPerS < 0.05 / 60,
      )
      const stop = name === 'curb-to-cellar' ? 15 * 0.0254 : 0
      const expected = shot.stretches.reduce(
        (sum, each) => sum + (each.toM - each.fromM) / each.advanceMPerS,
        0,
      )
      const shortened = expected * (1 - stop / (shot.toM - shot.fromM))
      if (stalls) expect(shot.run.hammerTimeS).toBeNull()
      else {
        const hammer = shot.run.hammerTimeS?.p50 ?? Number.NaN
        expect(Math.abs(hammer - shortened) / shortened).toBeLessThan(1e-12)
        expect(shot.run.hammerTimeS?.p10).toBe(shot.run.hammerTimeS?.p90)
      }
    }
  })
})

test(`time falls as pressure rises, while the tool grips (seed ${SEED})`, () => {
  const at = (psi: number) =>
    planOfDemo('firm-clay-service', {
      air: {
        compressor: { freeAirDelivery: '185 cfm', pressure: `${psi} psi` },
        hoses: [{ bore: '1 in', length: '50 ft' }],
      },
    })
  fc.assert(
    fc.property(fc.integer({ min: 60, max: 140 }), fc.integer({ min: 1, max: 40 }), (psi, more) => {
      const [low, high] = [at(psi), at(psi + more)]
      expect(high.run.hammerTimeS?.p50 ?? 0).toBeLessThan(low.run.hammerTimeS?.p50 ?? 0)
    }),
    { seed: SEED, numRuns: 25 },
  )
})

test('a changed input never changes the draws: other figures of the same file stay', () => {
  const plan = planOfDemo('firm-clay-service')
  const renamed = planOfDemo('firm-clay-service', { name: 'Another name', rates: undefined })
  expect(renamed.run).toEqual(plan.run)
})

test('US and SI twins of a file agree to 1e-9', () => {
  const us = planOfDemo('firm-clay-service')
  const si = planOf({
    schema: 'underlane/crossing@1',
    units: 'si',
    name: 'Alder Road 14, water service',
    line: { length: 12.8016 },
    depth: { launch: 1.2192, reception: 1.143, to: 'centre' },
    over: [{ from: 1.8288, to: 9.144, kind: 'road' }],
    ground: [{ word: 'firm clay', sptN: 6, stones: 'none' }],
    pipes: [{ system: 'pe-cts', size: '1 in', sdr: 9 }],
    tool: { diameter: 0.0635 },
    air: {
      compressor: {
        freeAirDelivery: (185 * 0.3048 ** 3) / 60,
        pressure: (100 * 0.45359237 * 9.80665) / 0.0254 ** 2,
      },
      hoses: [{ bore: 0.01905, length: 30.48 }],
      lubricator: true,
      altitude: 365.76,
      temperature: ((85 - 32) * 5) / 9 + 273.15,
      tools: 1,
    },
    utilities: [
      {
        kind: 'gas',
        station: 6.096,
        depth: 0.508,
        depthTo: 'top',
        diameter: 0.0508,
        crossingAngle: Math.PI / 2,
        owner: 'Millbrook Gas',
        evidence: 'exposed',
      },
    ],
    locate: demoDocument('firm-clay-service').locate,
    rates: 'example',
  })
  const compare = (a: unknown, b: unknown, path: string): void => {
    if (typeof a === 'number' && typeof b === 'number') {
      expect(Math.abs(a - b), path).toBeLessThanOrEqual(1e-9 * Math.max(1e-9, Math.abs(a)))
    } else if (a !== null && typeof a === 'object') {
      for (const [key, inner] of Object.entries(a))
        compare(inner, (b as Record<string, unknown>)[key], `${path}.${key}`)
    } else expect(a, path).toEqual(b)
  }
  compare(us, si, 'plan')
})
