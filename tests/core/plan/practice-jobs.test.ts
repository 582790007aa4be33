import { describe, expect, test } from 'vitest'
import { parseCrossing } from '../../../shared/contracts/crossing.ts'
import type { Plan, Spread } from '../../../shared/core/plan/plan.ts'
import { demoDocument, planOfDemo } from '../../support/crossings.ts'

/**
 * Jobs as people of the trade write them, with what they would find plausible and what they would laugh at.
 * Common practice, from memory, no published source: bands, not values.
 */
const minutes = (spread: Spread | null): number => (spread?.p50 ?? Number.NaN) / 60
const dollars = (plan: Plan): number => (plan.price?.p50MinorUnits ?? Number.NaN) / 100
const psi = (pa: number): number => pa / 6894.757
const inches = (m: number): number => m / 0.0254

function expectBetween(value: number, low: number, high: number): void {
  expect(value).toBeGreaterThanOrEqual(low)
  expect(value).toBeLessThanOrEqual(high)
}

describe('short-side water: 3/4 K, 28 ft under blacktop, 2 in tool, moist clay loam, 185 and 50 ft of 3/4 hose', () => {
  const plan = planOfDemo('short-side-water')
  test('8–25 minutes of hammering, a job of 3–5 hours', () => {
    expectBetween(minutes(plan.run.hammerTimeS), 8, 25)
    expectBetween(minutes(plan.run.crossingTimeS), 3 * 60, 5 * 60)
  })
  test('98–120 psi at the tool, and the word to regulate down', () => {
    expectBetween(psi(plan.air.toolGaugePa), 98, 120)
    expect(plan.cautions.map((c) => c.id)).toContain('regulate-down')
  })
  test('a 2 in tool on 3/4 K is ordinary: the oversize is accepted', () => {
    expect(plan.bore.fit).toBe('normal')
  })
  test('4–6 % need a second try; refusal is never 0 % in what is shown', () => {
    expectBetween(1 - plan.run.arrivalProbability, 0.035, 0.065)
  })
  test('a 60 ft coil fits', () => {
    expect(plan.pipes[0]?.coilLengthM).toBeGreaterThanOrEqual(18.28)
    expect(plan.release.reasons.map((r) => r.code)).not.toContain('coil-too-short')
  })
  test('$1,500–3,000, never under $800', () => {
    expectBetween(dollars(plan), 1500, 3000)
  })
})

describe('duct run: two 1-1/4 SDR 13.5, 180 ft frontage in five shots, 4 in tool, loam over clay', () => {
  const plan = planOfDemo('duct-run-five-shots')
  test('5 shots and 6 pits, never 10', () => {
    expect(plan.shots).toHaveLength(5)
    expect(plan.pits).toHaveLength(6)
  })
  test('the bundle is 3.32 in and the ratio 1.20, not that of one duct', () => {
    expect(inches(plan.bore.bundleDiameterM)).toBeCloseTo(3.32, 2)
    expect(plan.bore.ratio).toBeCloseTo(1.2, 2)
  })
  test('each shot hammers 12–30 minutes; 1–1.5 days of eight hours', () => {
    for (const shot of plan.shots) expectBetween(minutes(shot.run.hammerTimeS), 12, 30)
    expectBetween(minutes(plan.run.crossingTimeS) / 60 / 8, 0.9, 1.5)
  })
  test('24 in over the top with a 4 in tool is about 6 D under the drives: check, not hold', () => {
    const drives = plan.bore.coverByReach.filter((reach) => reach.kind === 'drive')
    expect(drives.map((reach) => reach.verdict)).toEqual(['check', 'check'])
    for (const drive of drives) expect(drive.coverRatio).toBeCloseTo(6, 1)
    expect(plan.release.status).toBe('check')
  })
  test('$16–32 a foot', () => {
    expectBetween(dollars(plan) / 180, 16, 32)
  })
})

describe('irrigation sleeve: 1 in poly under a 5 ft walk, 8 ft shot, 18 in to centre, 2 in tool, sandy loam', () => {
  const plan = planOfDemo('irrigation-sleeve')
  test('2–8 minutes of hammering, but not a job of 20 minutes', () => {
    expectBetween(minutes(plan.run.hammerTimeS), 1.9, 8)
    expect(minutes(plan.run.crossingTimeS)).toBeGreaterThan(45)
  })
  test('cover is a check, not refused by a 12 D rule', () => {
    expect(plan.release.status).toBe('check')
    // The second is the question about private sprinklers.
    expect(plan.release.reasons.map((r) => r.code)).toEqual(['cover-check', 'private-not-asked'])
  })
  test('$250–600 alone', () => {
    expectBetween(dollars(plan), 250, 600)
  })
  test('private sprinkler lines are asked about', () => {
    expect(plan.checklist.map((item) => item.id)).toContain('private-lines-asked')
  })
})

describe('curb to cellar: 1 in K, 33 ft, block wall, 5 ft below grade, footing at 6 ft 6, gas exposed at 20 in', () => {
  const plan = planOfDemo('curb-to-cellar')
  test('stop 12–18 in short of the wall and core from inside', () => {
    const stop = plan.cautions.find((c) => c.id === 'stop-short-of-wall')
    expectBetween(inches(Number(stop?.values.stopShortM)), 12, 18)
    expect(plan.checklist.map((item) => item.id)).toContain('wall-from-inside')
  })
  test('the pit floor is over 5 ft: shore it', () => {
    expect(plan.pits[0]?.floorDepthM).toBeGreaterThan(1.524)
    expect(plan.pits[0]?.needsProtection).toBe(true)
  })
  test('no pit is dug in the cellar', () => {
    expect(plan.pits.map((pit) => pit.serves)).toEqual(['launch'])
  })
  test('36–38 in between gas and bore: it passes', () => {
    const gas = plan.clearances[0]
    expectBetween(inches(gas?.gapM ?? 0), 36, 38)
    expect(gas?.shortM).toBe(0)
  })
  test('10–25 minutes of hammering; the ground of the house is bridged; $2,500–5,000', () => {
    expectBetween(minutes(plan.run.hammerTimeS), 10, 25)
    expect(plan.checklist.map((item) => item.id)).toContain('ground-bridge')
    expectBetween(dollars(plan), 2500, 5000)
  })
})

describe('sewer lateral on grade: 4 in SDR 35 at 1/4 in per ft, 50 ft, 5-1/2 in tool', () => {
  const plan = planOfDemo('sewer-on-grade')
  test('no promise: 5–15 % to arrive within an inch, never 90 %', () => {
    expectBetween(plan.deviation.gradeProbability ?? 1, 0.05, 0.15)
    expect(plan.release.status).toBe('hold')
    expect(plan.release.reasons.map((r) => r.code)).toContain('grade-not-promised')
  })
  test('other ways are named', () => {
    expect(plan.cautions.map((c) => c.id)).toContain('grade-other-ways')
  })
  test('the bell must pass, not only the pipe', () => {
    expect(plan.bore.bundleDiameterM).toBeGreaterThan((plan.pipes[0]?.outsideDiameterM ?? 0) * 1.05)
  })
})

describe('what is asked instead of guessed', () => {
  const asked = (change: Record<string, unknown>, path: string): void => {
    const parsed = parseCrossing({ ...demoDocument('firm-clay-service'), ...change })
    expect(parsed.ok).toBe(false)
    if (!parsed.ok) expect(parsed.issues.map((i) => `${i.path} ${i.code}`)).toContain(`${path} ask`)
  }
  test('a length of 42 without a unit', () => asked({ line: { length: 42 } }, 'line.length'))
  test('the gas main’s depth without its datum', () =>
    asked(
      { utilities: [{ kind: 'gas', station: '20 ft', depth: '30 in', evidence: 'marked' }] },
      'utilities.0.depthTo',
    ))
  test('the bore’s depth without its datum', () =>
    asked({ depth: { launch: '4 ft', reception: '4 ft' } }, 'depth.to'))
})

test('no coil is long enough: said before the truck leaves', () => {
  const plan = planOfDemo('short-side-water', {
    line: { length: '75 ft' },
    pipes: [{ system: 'copper-b88', size: '2', wall: 'K' }],
    tool: { diameter: '3.5 in' },
  })
  expect(plan.release.reasons.map((r) => r.code)).toContain('coil-too-short')
})
