import { describe, expect, test } from 'vitest'
import { runChecks } from '../../shared/contracts/run-checks.ts'
import { CATALOGUE } from '../../shared/core/catalogue.ts'
import { type AnyRelation, propertyName } from '../../shared/core/relation.ts'
import { PUBLISHED } from '../../shared/published/catalogue.ts'
import { SOURCES } from '../../shared/sources.ts'
import { SOURCE_FILES } from './source-tree.ts'

/** Ids users script against. Added to as the program grows, never taken from. */
const PROMISED = [
  'standard-atmosphere',
  'friction-factor',
  'hose-friction-loss',
  'orifice-discharge',
  'air-density-ratio',
  'receiver-time',
  'air-operating-point',
  'cavity-pressure-undrained',
  'cavity-pressure-dilatant',
  'cavity-expansion-factors',
  'spt-undrained-strength',
  'spt-friction-angle',
  'set-per-blow',
  'surface-heave',
  'ground-displacement',
  'vibration-ppv',
  'pit-volume',
  'pit-slope',
  'geodesic-length',
  'deviation',
  'contact-chance',
  'pipe-size',
  'pull-in-limit',
  'thermal-length-change',
  'bend-radius',
  'noise-duration',
  'earliest-start',
  'archard-wear',
  'degradation-forecast',
  'weibull-fit',
  'age-replacement',
]

/** Smaller than any tolerance worth the name of a check, larger than any rounding. */
const A_LITTLE_WRONG = 1.02

const isRelation = (value: unknown): value is AnyRelation =>
  value !== null &&
  typeof value === 'object' &&
  'fn' in value &&
  'inputs' in value &&
  'outputs' in value &&
  'id' in value

const FILES_WITH_RELATIONS = SOURCE_FILES.filter(
  (file) => file.path.startsWith('shared/core/') && /= relation\(\{/.test(file.text),
)

describe('the catalogue of relations', () => {
  test('knows every relation that a file declares', async () => {
    const lost: string[] = []
    for (const file of FILES_WITH_RELATIONS) {
      const exported: Record<string, unknown> = await import(`../../${file.path}`)
      const declared = Object.values(exported).filter(isRelation)
      if (declared.length === 0) lost.push(`${file.path} exports none`)
      for (const each of declared) if (!CATALOGUE.includes(each)) lost.push(`${file.path}: ${each.id}`)
    }
    expect(lost).toEqual([])
  })

  test('has each id once, and all that are promised', () => {
    const ids = CATALOGUE.map((each) => each.id)
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([])
    expect(PROMISED.filter((id) => !ids.includes(id))).toEqual([])
  })

  test('names only printed tables that exist, and each table is named', () => {
    const named = new Set(CATALOGUE.flatMap((each) => each.checks))
    expect([...named].filter((name) => !(name in PUBLISHED))).toEqual([])
    expect(Object.keys(PUBLISHED).filter((name) => !named.has(name))).toEqual([])
  })
})

describe('printed checks', () => {
  test('each speaks of a relation there is, an output it has and a source that is cited', async () => {
    const problems: string[] = []
    for (const [name, load] of Object.entries(PUBLISHED)) {
      for (const check of (await load()).checks) {
        const about = `${name}: ${check.relation} ${check.name}`
        const relation = CATALOGUE.find((each) => each.id === check.relation)
        if (relation === undefined) problems.push(`${about}: no such relation`)
        else if (!relation.checks.includes(name))
          problems.push(`${about}: the relation does not name this table`)
        if (!(check.source in SOURCES)) problems.push(`${about}: source ${check.source}`)
        const outputs = Object.entries(relation?.outputs ?? {}).map(([key, field]) =>
          propertyName(key, field),
        )
        for (const output of Object.keys(check.expected)) {
          if (!outputs.includes(output)) problems.push(`${about}: no output ${output}`)
        }
        for (const printed of Object.values(check.expected)) {
          if (printed.tolerance !== undefined && !printed.why)
            problems.push(`${about}: a tolerance without a why`)
        }
      }
    }
    expect(problems).toEqual([])
  })

  test('are met by every relation', async () => {
    const result = await runChecks(CATALOGUE, PUBLISHED)
    expect(result.checks.filter((check) => !check.pass)).toEqual([])
    expect(result.failed).toBe(0)
    expect(result.passed).toBe(result.checks.length)
  })

  const numericOutputs = CATALOGUE.flatMap((relation) =>
    Object.entries(relation.outputs)
      .filter(([, field]) => 'kind' in field)
      .map(([key, field]) => ({ id: relation.id, relation, output: propertyName(key, field) })),
  )
  test.each(numericOutputs)('notice $id answering $output 2 % too high', async ({ relation, output }) => {
    const wrong: AnyRelation = {
      ...relation,
      fn: (given: never) => {
        const found = relation.fn(given)
        const value = found[output]
        return typeof value === 'number' ? { ...found, [output]: value * A_LITTLE_WRONG } : found
      },
    }
    const tables = Object.fromEntries(
      Object.entries(PUBLISHED).filter(([name]) => relation.checks.includes(name)),
    )
    const result = await runChecks([wrong], tables)
    expect(result.failed).toBeGreaterThan(0)
  })
})

describe('citations', () => {
  test('each is used somewhere', () => {
    const users = SOURCE_FILES.filter(
      ({ path }) => path.startsWith('shared/') && !path.startsWith('shared/sources'),
    )
    const text = users.map((file) => file.text).join('\n')
    expect(Object.keys(SOURCES).filter((key) => !new RegExp(`['"]${key}['"]`).test(text))).toEqual([])
  })

  test('each says where it is from and how it came to us', () => {
    const thin = Object.entries(SOURCES).filter(
      ([, source]) => source.citation.length < 10 || source.use.length < 5,
    )
    expect(thin.map(([key]) => key)).toEqual([])
  })
})
