import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { releaseAnswer } from '../../shared/contracts/release-answer.ts'
import { buildApp } from '../../src/server/app.ts'
import { type OpenStore, openStore } from '../../src/store/open-store.ts'
import { demoDocument } from '../support/crossings.ts'

let folder: string
let store: OpenStore
let app: ReturnType<typeof buildApp>
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-release-api-'))
  store = await openStore(folder)
  app = buildApp({ store, webRoot: folder, hosts: [], now: () => new Date(), log: () => {} })
})
afterAll(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})
const ask = (body: unknown) =>
  app.request('/api/release', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', Host: 'localhost' },
    body: JSON.stringify(body),
  })

test('POST /api/release answers point by point, and never ready', async () => {
  const answer = await ask({ crossing: demoDocument('short-side-water'), now: '2026-12-01T09:00' })
  expect(answer.status).toBe(200)
  const read = releaseAnswer.parse(await answer.json())
  expect(read.status).toBe('hold')
  expect(read.points).toHaveLength(11)
})

test('what is missing is named', async () => {
  const answer = await ask({ now: '2026-12-01', signOffs: [{}] })
  expect(answer.status).toBe(422)
  const { issues } = (await answer.json()) as { issues: { path: string }[] }
  const paths = issues.map((each) => each.path)
  expect(paths).toContain('now')
  expect(paths.some((path) => path.startsWith('crossing'))).toBe(true)
  expect(paths.some((path) => path.startsWith('signOffs.0'))).toBe(true)
})
