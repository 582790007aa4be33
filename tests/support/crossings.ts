import { readdirSync, readFileSync } from 'node:fs'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'

const FOLDER = new URL('../../src/store/demo/', import.meta.url)

export type CrossingDocument = Record<string, unknown>

/** The demo crossings double as fixtures: what a new user sees is what the tests hold up. */
export const DEMO_NAMES: readonly string[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.replace('.json', ''))

export function demoDocument(name: string): CrossingDocument {
  return JSON.parse(readFileSync(new URL(`${name}.json`, FOLDER), 'utf8')) as CrossingDocument
}

export function inputOf(document: unknown): CrossingInput {
  const parsed = parseCrossing(document)
  if (!parsed.ok) throw new Error(`not a crossing: ${JSON.stringify(parsed.issues)}`)
  return parsed.value
}

export function planOf(document: unknown): Plan {
  const plan = planCrossing(inputOf(document))
  if (!plan.ok) throw new Error(`no plan: ${JSON.stringify(plan.issues)}`)
  return plan.value
}

export const planOfDemo = (name: string, change: CrossingDocument = {}): Plan =>
  planOf({ ...demoDocument(name), ...change })
