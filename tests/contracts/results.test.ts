import { expect, test } from 'vitest'
import { checksResult, relationResult } from '../../shared/contracts/formula-results.ts'
import { planResult } from '../../shared/contracts/plan-result.ts'
import { runChecks } from '../../shared/contracts/run-checks.ts'
import { CATALOGUE } from '../../shared/core/catalogue.ts'
import { PUBLISHED } from '../../shared/published/catalogue.ts'
import { planDocument } from '../../src/plan-document.ts'
import { answerRelation } from '../../src/relation-answer.ts'
import { jsonSchema, SCHEMA_NAMES } from '../../src/schemas.ts'
import { DEMO_NAMES, demoDocument } from '../support/crossings.ts'

test.each(DEMO_NAMES)('the result of %s is what its contract says, through JSON and back', (name) => {
  const made = planDocument(demoDocument(name))
  expect(made.ok).toBe(true)
  if (made.ok) expect(planResult.safeParse(JSON.parse(JSON.stringify(made.value))).error).toBeUndefined()
})

test('so are the answer of a formula and the run of the checks', async () => {
  const answer = answerRelation('standard-atmosphere', [['altitude', '2000 m']])
  expect(answer.ok).toBe(true)
  if (answer.ok) expect(relationResult.safeParse(answer.value).error).toBeUndefined()
  const checks = { schema: 'underlane/checks@1', ...(await runChecks(CATALOGUE, PUBLISHED)) }
  expect(checksResult.safeParse(JSON.parse(JSON.stringify(checks))).error).toBeUndefined()
})

test.each(SCHEMA_NAMES)('%s has a JSON Schema that can be written out', (name) => {
  const schema = JSON.stringify(jsonSchema(name))
  expect(schema).toContain(`underlane/${name}`)
  expect(schema.length).toBeGreaterThan(200)
})

test('the crossing schema names its keys and says that quantities carry units', () => {
  const schema = jsonSchema('crossing') as { properties: Record<string, unknown>; required: string[] }
  expect(Object.keys(schema.properties)).toEqual(
    expect.arrayContaining(['line', 'depth', 'ground', 'pipes', 'tool', 'air']),
  )
  expect(JSON.stringify(schema)).toContain('with its unit')
})
