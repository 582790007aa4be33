import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Change, nextToSend, type Outbox, queued, type Send, sendAll } from '../../web/offline/outbox.ts'

const put = (key: string, more: Partial<Change> = {}): Change => ({
  id: 'a',
  kind: 'put',
  baseVersion: 3,
  document: { name: key },
  key,
  wasSent: false,
  ...more,
})
const remove = (key: string, more: Partial<Change> = {}): Change =>
  put(key, { kind: 'delete', document: null, ...more })
const holding = (...changes: readonly Change[]): Outbox =>
  changes.reduce<Outbox>((outbox, change) => queued(outbox, change, 0), [])
const keys = (outbox: Outbox): readonly string[] => outbox.map(({ key }) => key)

/** An outbox in memory, changed in one step as the browser's is. */
function memory(start: Outbox) {
  let held = start
  return {
    change: async (edit: (outbox: Outbox) => Outbox) => {
      held = edit(held)
      return held
    },
    held: () => held,
  }
}

describe('taking a change in', () => {
  test('a later change stands for an earlier one that never left, made from the same version', () => {
    const [only, ...others] = holding(put('1'), put('2', { baseVersion: 9 }))
    expect(others).toEqual([])
    expect(only).toMatchObject({ key: '2', baseVersion: 3, document: { name: '2' }, state: 'waiting' })
  })

  test('one that may have arrived stays, under its own key', () => {
    expect(keys(holding(put('1', { wasSent: true }), put('2'), put('3')))).toEqual(['1', '3'])
  })

  test('a deletion stands behind a change that waits: taken back, the change is still there', () => {
    const both = holding(put('1', { baseVersion: null }), remove('2', { baseVersion: null }))
    expect(keys(both)).toEqual(['1', '2'])
    expect(keys(holding(put('1', { wasSent: true }), remove('2')))).toEqual(['1', '2'])
    expect(keys(holding(remove('1'), remove('2')))).toEqual(['2'])
  })

  test('a change does not stand for somebody else’s', () => {
    const both = holding(put('1', { by: 'lee' }), put('2', { by: 'eve' }), put('3', { by: 'eve' }))
    expect(both.map(({ key, by }) => [key, by])).toEqual([
      ['1', 'lee'],
      ['3', 'eve'],
    ])
  })

  test('the same key twice is one change', () => {
    expect(keys(holding(put('1'), put('1')))).toEqual(['1'])
  })

  test('other crossings are left alone', () => {
    expect(keys(holding(put('1'), put('2', { id: 'b' }), put('3')))).toEqual(['3', '2'])
  })

  test('what waited for a person is answered by a new change, made from what the person saw', () => {
    const stuck = holding(put('1')).map((each) => ({ ...each, state: 'conflict' as const }))
    expect(queued(stuck, put('2', { baseVersion: 7 }), 0)).toMatchObject([{ key: '2', baseVersion: 7 }])
  })
})

describe('one browser, two people', () => {
  test('a change goes under the name of whoever made it, and nothing of the same crossing goes past it', async () => {
    const box = memory(
      holding(
        put('1', { by: 'lee' }),
        put('2', { by: 'eve' }),
        put('3', { id: 'b', by: 'eve' }),
        put('4', { id: 'c' }),
      ),
    )
    const went: string[] = []
    const send: Send = async ({ key }) => {
      went.push(key)
      return { state: 'done', version: 9 }
    }
    await sendAll(box.change, send, ({ by }) => by === undefined || by === 'eve')
    expect(went).toEqual(['3', '4'])
    await sendAll(box.change, send, ({ by }) => by === 'lee')
    expect(went).toEqual(['3', '4', '1'])
    expect(keys(box.held())).toEqual(['2'])
  })
})

describe('sending', () => {
  test('in order; a later change is made from the version the earlier one became', async () => {
    const box = memory(holding(put('1', { wasSent: true }), put('2')))
    const asked: (readonly [string, number | null])[] = []
    await sendAll(box.change, async ({ key, baseVersion }) => {
      asked.push([key, baseVersion])
      return { state: 'done', version: (baseVersion ?? 0) + 1 }
    })
    expect(asked).toEqual([
      ['1', 3],
      ['2', 4],
    ])
    expect(box.held()).toEqual([])
  })

  test('no network: all stays, the one tried is marked as perhaps arrived, nothing after it is tried', async () => {
    const box = memory(holding(put('1'), put('2', { id: 'b' })))
    let asked = 0
    await sendAll(box.change, async () => {
      asked += 1
      return { state: 'unreachable' }
    })
    expect(asked).toBe(1)
    expect(box.held().map(({ key, state }) => [key, state])).toEqual([
      ['1', 'sent'],
      ['2', 'waiting'],
    ])
  })

  test('a conflict waits for a person and holds back only its own crossing', async () => {
    const box = memory(holding(put('1', { wasSent: true }), put('2'), put('3', { id: 'b' })))
    const send: Send = async ({ id }) => (id === 'a' ? { state: 'conflict' } : { state: 'done', version: 1 })
    const left = await sendAll(box.change, send)
    expect(left.map(({ key, state }) => [key, state])).toEqual([
      ['1', 'conflict'],
      ['2', 'waiting'],
    ])
    expect(nextToSend(left)).toBeNull()
  })

  test('a change made while another of the same crossing is on its way is not lost and follows it', async () => {
    const box = memory(holding(put('1')))
    const bases: (number | null)[] = []
    await sendAll(box.change, async ({ key, baseVersion }) => {
      bases.push(baseVersion)
      if (key === '1') await box.change((outbox) => queued(outbox, put('2'), 0))
      return { state: 'done', version: (baseVersion ?? 0) + 1 }
    })
    expect(bases).toEqual([3, 4])
    expect(box.held()).toEqual([])
  })

  test('a mistake of ours while sending loses nothing', async () => {
    const box = memory(holding(put('1')))
    await expect(sendAll(box.change, () => Promise.reject(new RangeError('ours')))).rejects.toThrow('ours')
    expect(keys(box.held())).toEqual(['1'])
  })

  test('whatever comes and however often the network fails, the server ends with the last word on each crossing', async () => {
    const step = fc.record({ id: fc.constantFrom('a', 'b'), remove: fc.boolean(), flush: fc.boolean() })
    const luck = fc.infiniteStream(fc.constantFrom('arrives', 'answer lost', 'never left'))
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 12 }), luck, async (steps, fates) => {
        const box = memory([])
        const server = new Map<string, { version: number; document: unknown }>()
        const done = new Map<string, number>()
        /** The versions an answer has named: all that whoever makes a change can know. */
        const heard = new Map<string, number>()
        /** The server as it answers: from the version last seen, each key once. */
        const receive = ({ id, key, baseVersion, document }: Outbox[number]) => {
          const known = done.get(key)
          if (known !== undefined) return known
          const version = server.get(id)?.version ?? null
          expect(baseVersion).toBe(version)
          const next = (version ?? 0) + 1
          server.set(id, { version: next, document })
          done.set(key, next)
          return next
        }
        const unlucky: Send = async (change) => {
          const fate = fates.next().value
          if (fate === 'never left') return { state: 'unreachable' }
          const version = receive(change)
          if (fate === 'answer lost') return { state: 'unreachable' }
          heard.set(change.id, version)
          return { state: 'done', version }
        }
        const lastWord = new Map<string, unknown>()
        for (const [at, { id, remove: isRemoval, flush }] of steps.entries()) {
          const document = isRemoval ? null : { at }
          const baseVersion = heard.get(id) ?? null
          const change = { ...put(`k${at}`), id, kind: isRemoval ? 'delete' : 'put', baseVersion } as const
          await box.change((outbox) => queued(outbox, { ...change, document }, at))
          lastWord.set(id, document)
          if (flush) await sendAll(box.change, unlucky)
        }
        await sendAll(box.change, async (change) => ({ state: 'done', version: receive(change) }))
        expect(box.held()).toEqual([])
        for (const [id, document] of lastWord) expect(server.get(id)?.document ?? null).toEqual(document)
      }),
    )
  })
})
