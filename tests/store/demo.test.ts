import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import { NOUN_FILES } from '../../shared/contracts/noun-files.ts'
import { shopDemo } from '../../src/store/demo-shop.ts'
import { demoId } from '../../src/store/seed-demo.ts'

const FOLDER = new URL('../../src/store/demo/', import.meta.url)
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.json'))

test('the invented town has crossings', () => {
  expect(FILES.length).toBeGreaterThan(0)
})

test.each(FILES)('%s is a crossing file', (file) => {
  const parsed = parseCrossing(JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8')))
  expect(parsed).toMatchObject({ ok: true })
})

test('every document of the invented shop is one that the server would take', () => {
  const documents = shopDemo(new Date('2026-03-02T09:00:00Z'), demoId)
  expect(documents.length).toBeGreaterThan(20)
  const refused = documents.filter(({ noun, document }) => !NOUN_FILES[noun].safeParse(document).success)
  expect(refused).toEqual([])
})
