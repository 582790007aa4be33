import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { planVersionText } from '../../shared/contracts/plan-version.ts'
import { SIGN_ITEMS } from '../../shared/core/digsafe/sign-off-items.ts'
import { demoDocument } from '../support/crossings.ts'
import { run } from './run-in-process.ts'

const OF = '00000000-0000-4000-8000-000000000002'
const base = demoDocument('short-side-water')
const locate = base.locate as Record<string, unknown>
const ticket = { ...(locate.ticket as object), starts: '2026-11-25T07:00', expires: '2026-12-15T07:00' }
const crossing = { ...base, locate: { ...locate, ticket } }
const plan = createHash('sha256').update(planVersionText(crossing)).digest('hex')
const signOffs = ['day', 'site', 'bore'].map((layer) => ({
  name: layer,
  crossing: OF,
  on: '2026-12-01',
  at: '08:00',
  layer,
  by: 'Ada',
  bore: 1,
  plan,
  items: SIGN_ITEMS.filter((each) => each.layer === layer).map((each) => each.id),
  photos: SIGN_ITEMS.filter((each) => each.needsPhoto).map((each) => ({ item: each.id, attachment: OF })),
  watchers: ['Bo', 'Cy', 'Di'],
}))

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-release-'))
  writeFileSync(join(folder, 'crossing.json'), JSON.stringify(crossing))
  writeFileSync(join(folder, 'signed.json'), JSON.stringify(signOffs))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const release = (...more: string[]) =>
  run(['release', 'crossing.json', '--now', '2026-12-01T09:00', ...more], { workingFolder: folder })

test('signed or not, a file is never ready', async () => {
  const signed = await release('--signed', 'signed.json', '--json')
  expect(signed.code).toBe(0)
  expect(JSON.parse(signed.stdout)).toMatchObject({
    schema: 'underlane/release@1',
    status: 'check',
    why: 'elsewhere',
    until: null,
    plan,
  })
  const bare = await release()
  expect(bare.stdout).toMatch(/^HOLD: /)
  expect(bare.stdout).toContain('Not signed today: Competent person has looked at every pit')
  expect(bare.stdout).toContain('Not for gas or service yet')
  const spanish = await release('--lang', 'es')
  expect(spanish.stdout).toMatch(/^ALTO: /)
})

test('what cannot be asked is refused in words', async () => {
  const wrong = await run(['release', 'crossing.json', '--now', 'noon', '--bore', '7'], {
    workingFolder: folder,
  })
  expect(wrong.code).toBe(2)
  expect(wrong.stderr).toContain('2026-03-02T09:10')
  expect((await release('--bore', '7')).code).toBe(2)
  expect((await release('--bore', 'x')).code).toBe(64)
})
