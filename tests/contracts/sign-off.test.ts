import { describe, expect, test } from 'vitest'
import { planVersionText } from '../../shared/contracts/plan-version.ts'
import { signOffFile, signOffOf } from '../../shared/contracts/sign-off.ts'
import { parseWith } from '../../shared/contracts/zod-issues.ts'
import { writeCivil } from '../../shared/core/digsafe/civil.ts'
import { demoDocument } from '../support/crossings.ts'

const OLD = {
  name: 'Marks seen',
  crossing: '00000000-0000-4000-8000-000000000002',
  on: '2026-03-02',
  layer: 'bore',
  by: 'Ada',
}
const read = (change: Record<string, unknown>) => parseWith(signOffFile, { ...OLD, ...change })

describe('a sign-off', () => {
  test('of before is still read, and closes nothing', () => {
    const parsed = read({})
    expect(parsed.ok && signOffOf(parsed.value)).toMatchObject({
      items: [],
      photos: [],
      plan: null,
      bore: null,
    })
    expect(parsed.ok && writeCivil(signOffOf(parsed.value).atMinute)).toBe('2026-03-02T00:00')
  })
  test('a rule set aside by one person under two spellings is refused', () => {
    const setAside = { code: 'clearance-short', line: 1, reason: 'hand dug to it', second: ' ADA ' }
    const parsed = read({ setAside })
    expect(parsed.ok ? [] : parsed.issues.map(({ path, code }) => [path, code])).toEqual([
      ['setAside.second', 'inputs-conflict'],
    ])
    expect(read({ setAside: { ...setAside, second: 'Eve' } }).ok).toBe(true)
  })
  test('odd times, plans and photos are refused', () => {
    for (const change of [
      { at: '7:40' },
      { at: '24:00' },
      { plan: 'abc' },
      { photos: [{ item: 'x' }] },
      { layer: 'all' },
    ]) {
      expect(read(change).ok, JSON.stringify(change)).toBe(false)
    }
  })
})

test('the version of a plan moves with what is signed for, and not with what was seen or what it costs', () => {
  const document = demoDocument('firm-clay-service')
  const version = planVersionText(document)
  expect(planVersionText({ ...document, observations: [{ station: '3 ft' }], rates: 'example' })).toBe(
    version,
  )
  expect(planVersionText({ ...document, depth: { launch: '5 ft' } })).not.toBe(version)
  expect(planVersionText({ ...document, utilities: [] })).not.toBe(version)
  expect(planVersionText({ ...document, units: 'si' })).not.toBe(version)
})
