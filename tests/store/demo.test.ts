import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { parseCrossing } from '../../shared/contracts/crossing.ts'

const FOLDER = new URL('../../src/store/demo/', import.meta.url)
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.json'))

test('the invented town has crossings', () => {
  expect(FILES.length).toBeGreaterThan(0)
})

test.each(FILES)('%s is a crossing file', (file) => {
  const parsed = parseCrossing(JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8')))
  expect(parsed).toMatchObject({ ok: true })
})
