import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { DEMO_NAMES, planOfDemo } from '../support/crossings.ts'

/**
 * GOLDEN, NOT TRUTH: figures this program gave before. They guard against change, not against error. When one moves on
 * purpose: raise ENGINE_VERSION, write old and new into the changelog under "Numbers", and run once with
 * UNDERLANE_REGOLD=1.
 */
const FILE = new URL('./plans.json', import.meta.url)

type Figures = Readonly<Record<string, number | null>>
type Golden = { readonly engine: string; readonly plans: Readonly<Record<string, Figures>> }

const figuresOf = (plan: Plan): Figures => ({
  toolGaugePa: plan.air.toolGaugePa,
  setPerBlowM: plan.run.setPerBlowM,
  advanceP50MPerS: plan.run.advanceMPerS.p50,
  hammerP10S: plan.run.hammerTimeS?.p10 ?? null,
  hammerP50S: plan.run.hammerTimeS?.p50 ?? null,
  hammerP90S: plan.run.hammerTimeS?.p90 ?? null,
  crossingP50S: plan.run.crossingTimeS?.p50 ?? null,
  arrivalProbability: plan.run.arrivalProbability,
  refusalProbability: plan.run.refusalProbability,
  heaveP50M: plan.ground.heaveM.p50,
  lateralP90M: plan.deviation.lateralM.p90,
  hitProbability: plan.deviation.hitProbability,
  quotedMinorUnits: plan.price?.quotedMinorUnits ?? null,
})

const now: Golden = {
  engine: ENGINE_VERSION,
  plans: Object.fromEntries(DEMO_NAMES.map((name) => [name, figuresOf(planOfDemo(name))])),
}
if (process.env.UNDERLANE_REGOLD === '1' || !existsSync(FILE)) {
  writeFileSync(FILE, `${JSON.stringify(now, null, 2)}\n`)
}
const golden = JSON.parse(readFileSync(FILE, 'utf8')) as Golden

test('the golden figures are of this engine version', () => {
  expect(golden.engine).toBe(ENGINE_VERSION)
  expect(Object.keys(golden.plans)).toEqual([...DEMO_NAMES])
})

test.each(DEMO_NAMES)('golden: %s gives the figures it gave before', (name) => {
  for (const [figure, before] of Object.entries(golden.plans[name] ?? {})) {
    const after = now.plans[name]?.[figure] ?? null
    if (before === null || after === null) expect(after, figure).toBe(before)
    else
      expect(Math.abs(after - before), `${figure}: ${before} → ${after}`).toBeLessThanOrEqual(
        1e-9 * Math.abs(before),
      )
  }
})
