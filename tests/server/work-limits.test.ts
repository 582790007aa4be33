import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { planDocument } from '../../src/plan-document.ts'
import { buildApp } from '../../src/server/app.ts'
import type { Planner } from '../../src/server/planning/plan-task.ts'
import { createWorkerPlanner } from '../../src/server/planning/worker-planner.ts'
import { type OpenStore, openStore } from '../../src/store/open-store.ts'
import { demoDocument } from '../support/crossings.ts'

const ID = '00000000-0000-4000-8000-000000000001'
const CROSSING = demoDocument('curb-to-cellar')
const NEVER = new AbortController().signal

let folder: string
let store: OpenStore
let entry: URL
const planners: Planner[] = []
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-limits-'))
  store = await openStore(join(folder, 'data'))
  const outfile = join(folder, 'server.mjs')
  await build({
    entryPoints: ['src/server/main.ts'],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    external: ['libsql', 'pg', '@node-rs/argon2'],
    logLevel: 'silent',
  })
  entry = new URL(`file://${outfile}`)
})
afterAll(async () => {
  for (const planner of planners) await planner.close()
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

function plannerWith(limits: { budgetMs?: number; mostWaiting?: number }): Planner {
  const planner = createWorkerPlanner({ entry, threads: 1, budgetMs: 20_000, mostWaiting: 8, ...limits })
  planners.push(planner)
  return planner
}
const appWith = (planner?: Planner) =>
  buildApp({
    store,
    webRoot: folder,
    hosts: [],
    now: () => new Date(0),
    log: () => {},
    ...(planner === undefined ? {} : { planner }),
  })
const sent = (body: unknown, method: string) => ({
  method,
  body: JSON.stringify(body),
  headers: { 'Content-Type': 'application/json' },
})

const many = <Item>(count: number, item: (at: number) => Item): Item[] =>
  Array.from({ length: count }, (_, at) => item(at))
const STRETCH = { uscs: 'CL', sptN: 9, stones: 'few' }
const LINE = { kind: 'gas', station: '20 ft', depth: '30 in', depthTo: 'top', diameter: '2 in' }

describe('more work than a crossing can be', () => {
  const tooMuch: readonly (readonly [string, Record<string, unknown>])[] = [
    ['ground', { ground: many(51, () => STRETCH) }],
    ['utilities', { utilities: many(201, () => LINE) }],
    ['shots', { shots: many(13, (at) => ({ to: `${at + 1} ft` })) }],
    ['spread.draws', { spread: { draws: 65_537 } }],
  ]
  test.each(tooMuch)('of %s is refused at every door', async (path, part) => {
    const file = { ...CROSSING, ...part }
    for (const [address, method] of [
      ['/api/plans', 'POST'],
      [`/api/crossings/${ID}`, 'PUT'],
    ] as const) {
      const answer = await appWith().request(address, sent(file, method))
      expect(answer.status).toBe(422)
      const { issues }: { issues: { path: string; code: string }[] } = await answer.json()
      expect(issues).toContainEqual(expect.objectContaining({ path, code: 'out-of-range' }))
    }
  })

  test('a passing question is answered with at most 16,384 draws', async () => {
    const asked = (draws: number) => sent({ ...CROSSING, spread: { draws } }, 'POST')
    const refused = await appWith().request('/api/plans', asked(16_385))
    expect(refused.status).toBe(422)
    expect((await refused.json()).issues[0]).toMatchObject({
      path: 'spread.draws',
      code: 'out-of-range',
      text: expect.stringMatching(/16/),
    })
    expect((await appWith().request('/api/plans', asked(16_384))).status).toBe(200)
  })
})

describe('a plan made in a thread', () => {
  test('is the plan made on the spot', async () => {
    const planner = plannerWith({})
    expect(await planner.plan(CROSSING, NEVER)).toEqual(planDocument(CROSSING))
    expect(await planner.plan({}, NEVER)).toEqual(planDocument({}))
    const answer = await appWith(planner).request(`/api/crossings/${ID}`, sent(CROSSING, 'PUT'))
    expect(answer.status).toBe(201)
    expect((await answer.json()).result.schema).toBe('underlane/plan@1')
  })

  test('that takes longer than it may is given up, and the next one is begun', async () => {
    const app = appWith(plannerWith({ budgetMs: 1 }))
    for (let times = 0; times < 2; times++) {
      const answer = await app.request('/api/plans', sent(CROSSING, 'POST'))
      expect(answer.status).toBe(503)
      expect(answer.headers.get('Retry-After')).not.toBeNull()
      expect(await answer.json()).toMatchObject({ code: 'too-long', issues: [] })
    }
  })

  test('does not hold up what else is asked', async () => {
    const app = appWith(plannerWith({}))
    let isPlanned = false
    const slow = { ...CROSSING, spread: { draws: 16_384 } }
    const planned = Promise.resolve(app.request('/api/plans', sent(slow, 'POST'))).then((answer) => {
      isPlanned = true
      return answer.status
    })
    expect((await app.request('/api/health')).status).toBe(200)
    expect(isPlanned).toBe(false)
    expect(await planned).toBe(200)
  })

  test('for somebody who has gone away is given up', async () => {
    const planner = plannerWith({})
    const leaves = new AbortController()
    const refused = planner.plan({ ...CROSSING, spread: { draws: 16_384 } }, leaves.signal)
    leaves.abort()
    await expect(refused).rejects.toMatchObject({ code: 'given-up' })
    expect((await planner.plan(CROSSING, NEVER)).ok).toBe(true)
  })

  test('has a place in a line that ends', async () => {
    const planner = plannerWith({ mostWaiting: 2 })
    const asked = many(3, () => planner.plan(CROSSING, NEVER).then((outcome) => outcome.ok))
    await expect(asked[2]).rejects.toMatchObject({ code: 'too-busy' })
    expect(await Promise.all(asked.slice(0, 2))).toEqual([true, true])
  })
})
