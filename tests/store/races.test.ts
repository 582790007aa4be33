import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { OpenStore } from '../../src/store/open-store.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const EDITORS = 20
const CROSSINGS = 50
const idOf = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`
const actOf = (who: string) => ({ who, at: new Date('2026-03-02T09:00:00Z'), from: 'test', requestKey: null })

/** Adds its mark to a crossing, again and again from what it is told is there, until that goes through. */
async function mark(store: OpenStore, id: string, editor: string): Promise<number> {
  let seen = await store.crossings.find(id)
  for (let lost = 0; lost < EDITORS * 10; lost++) {
    if (seen === null) break
    const document = { ...seen.document, [editor]: true }
    const changed = await store.crossings.replace(
      { id, document, made: null, expectedVersion: seen.version },
      actOf(editor),
    )
    if (changed.outcome === 'done') return lost
    if (changed.outcome !== 'conflict') throw new Error(changed.outcome)
    seen = changed.stored
  }
  throw new Error(`${editor} never got through to ${id}`)
}

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  beforeAll(async () => {
    places = await makePlaces()
  }, 60_000)
  afterAll(() => places.end(), 60_000)

  test(`${EDITORS} editors of ${CROSSINGS} crossings lose nothing`, async () => {
    const store = await openAt(await places.fresh())
    const ids = Array.from({ length: CROSSINGS }, (_, n) => idOf(n))
    for (const id of ids) {
      await store.crossings.insert({ id, document: { name: id }, made: null, demo: false }, actOf('start'))
    }
    const editors = Array.from({ length: EDITORS }, (_, n) => `editor${n}`)
    const lost = await Promise.all(
      editors.map(async (editor) => {
        let races = 0
        // All come to each crossing together: each has read the same version when the first writes.
        for (const id of ids) races += await mark(store, id, editor)
        return races
      }),
    )
    expect(lost.reduce((sum, each) => sum + each, 0)).toBeGreaterThan(CROSSINGS)
    for (const id of ids) {
      const found = await store.crossings.find(id)
      expect(found?.version).toBe(1 + EDITORS)
      expect(Object.keys(found?.document ?? {}).sort()).toEqual(['name', ...editors].sort())
      const history = await store.crossings.history(id, { after: null, limit: 500 })
      expect(history.items.map((line) => line.version)).toEqual(
        Array.from({ length: 1 + EDITORS }, (_, n) => n + 1),
      )
    }
    await store.close()
  }, 60_000)

  test('one id inserted by many at once is made once', async () => {
    const store = await openAt(await places.fresh())
    const answers = await Promise.all(
      Array.from({ length: 20 }, (_, n) =>
        store.crossings.insert(
          { id: idOf(1), document: { name: n % 2 === 0 ? 'even' : 'odd' }, made: null, demo: false },
          actOf(`editor${n}`),
        ),
      ),
    )
    const count = (outcome: string) => answers.filter((each) => each.outcome === outcome).length
    expect([count('done'), count('same'), count('conflict')]).toEqual([1, 9, 10])
    await store.close()
  })
})
