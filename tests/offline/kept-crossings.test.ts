import { describe, expect, test } from 'vitest'
import type { BrowserStore, CrossingCopy } from '../../web/offline/browser-store.ts'
import { createKeptCrossings, newKey } from '../../web/offline/kept-crossings.ts'
import type { Change, Outbox } from '../../web/offline/outbox.ts'

function storeInMemory(): BrowserStore {
  const copies = new Map<string, CrossingCopy>()
  let outbox: Outbox = []
  return {
    putCopies: async (given) => {
      for (const copy of given) copies.set(copy.id, copy)
    },
    copy: async (id) => copies.get(id) ?? null,
    copies: async () => [...copies.values()],
    removeCopy: async (id) => void copies.delete(id),
    changeOutbox: async (change) => {
      outbox = change(outbox)
      return outbox
    },
  }
}

const failing = (error: Error): BrowserStore => {
  const fail = () => Promise.reject(error)
  return { putCopies: fail, copy: fail, copies: fail, removeCopy: fail, changeOutbox: fail }
}

const alone = (work: () => Promise<Outbox>) => work()
const HOUR_MS = 3_600_000
const crossing = (id: string, name: string) => ({ id, version: 1, demo: false, document: { name } })
const change: Change = {
  id: 'a',
  kind: 'put',
  baseVersion: 1,
  document: {},
  key: 'k',
  wasSent: false,
}

describe('crossings kept in the browser', () => {
  test('come back by name, with their age', async () => {
    let nowMs = 0
    const kept = createKeptCrossings(storeInMemory(), { now: () => nowMs, alone })
    await kept.keepCrossings([crossing('1', 'Willow'), crossing('2', 'Alder')])
    nowMs = 3 * HOUR_MS
    expect(kept.ageOf('1')).toBe(0)
    expect((await kept.keptList()).map(({ id }) => id)).toEqual(['2', '1'])
    expect(kept.ageOf('1')).toBe(3 * 3600)
    expect(kept.ageOf('3')).toBeNull()
    await kept.forgetCrossing('1')
    expect(await kept.keptCrossing('1')).toBeNull()
    expect(kept.ageOf('1')).toBeNull()
  })

  test('changes are counted from what the store holds, after a reload too', async () => {
    const store = storeInMemory()
    const before = createKeptCrossings(store, { now: () => 0, alone })
    expect(await before.queueChange(change)).toBe(true)
    const after = createKeptCrossings(store, { now: () => 0, alone })
    await after.refresh()
    expect(after.outboxCount.value).toBe(1)
    await after.flushOutbox(async () => ({ state: 'refused' }))
    expect(after.stuckChanges.value.map(({ key }) => key)).toEqual(['k'])
    await after.dropChange('k')
    expect(after.outboxCount.value).toBe(0)
  })

  test('while another tab sends, this one does not', async () => {
    const kept = createKeptCrossings(storeInMemory(), { now: () => 0, alone: async () => null })
    await kept.queueChange(change)
    const left = await kept.flushOutbox(() => Promise.reject(new Error('sent twice')))
    expect(left.map(({ key }) => key)).toEqual(['k'])
  })

  test.each([
    ['a private window', 'SecurityError', 'refused'],
    ['a full disk', 'QuotaExceededError', 'no-room'],
  ])('%s is a state that is shown, and nothing is thrown', async (_what, name, trouble) => {
    const kept = createKeptCrossings(failing(new DOMException('no', name)), { now: () => 0, alone })
    expect(await kept.queueChange(change)).toBe(false)
    expect(await kept.keepCrossing(crossing('1', 'Alder'))).toBe(false)
    expect(await kept.keptCrossing('1')).toBeNull()
    expect(await kept.keptList()).toEqual([])
    expect(await kept.flushOutbox(async () => ({ state: 'unreachable' }))).toEqual([])
    await kept.refresh()
    expect(kept.keepingTrouble.value).toBe(trouble)
  })

  test('a mistake of ours is not taken for a full disk', async () => {
    const kept = createKeptCrossings(failing(new RangeError('ours')), { now: () => 0, alone })
    await expect(kept.keptList()).rejects.toThrow('ours')
  })

  test('keys are what the server takes, and differ', () => {
    expect(newKey()).toMatch(/^[0-9a-f]{32}$/)
    expect(newKey()).not.toBe(newKey())
  })
})
