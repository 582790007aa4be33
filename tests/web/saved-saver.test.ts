import { describe, expect, test } from 'vitest'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import type { Change, Sent } from '../../web/saved/crossing-requests.ts'
import { createSaver, type SaverStart } from '../../web/saved/saver.ts'
import type { SentOrWaiting } from '../../web/saved/send-or-queue.ts'
import { createCrossingModel } from '../../web/state/crossing-model.ts'
import { ID, keptAs } from './saved-kept.ts'

const NEW: SaverStart = { id: ID, base: null, kept: null, waitingKey: null }
const openedAt = (version: number): SaverStart => ({
  id: ID,
  base: { version, document: FIRST_PRESET },
  kept: keptAs(version),
  waitingKey: null,
})

/** A saver whose server gives the answers listed, one a save. */
function saverWith(start: SaverStart, ...answers: readonly SentOrWaiting[]) {
  const model = createCrossingModel(FIRST_PRESET, { soon: (run) => run() })
  const left = [...answers]
  const sent: Change[] = []
  const dropped: string[] = []
  const listeners = new Map<string, (answer: Sent) => void>()
  let keys = 0
  const saver = createSaver(model, start, {
    send: async (change) => {
      sent.push(change)
      const answer = left.shift()
      if (answer === undefined) throw new Error('one save too many')
      return answer
    },
    flush: async () => false,
    whenSent: (key, listener) => {
      listeners.set(key, listener)
      return () => void listeners.delete(key)
    },
    newKey: () => {
      keys += 1
      return `key-${keys}`
    },
    drop: (key) => void dropped.push(key),
  })
  return { model, saver, sent, dropped, listeners }
}

describe('saving', () => {
  test('a new crossing is put under its id without a version, and is saved at the one answered', async () => {
    const { saver, sent } = saverWith(NEW, { state: 'done', kept: keptAs(1) })
    expect(saver.state.value).toEqual({ state: 'unsaved', from: null })
    await saver.save()
    expect(sent).toEqual([{ id: ID, document: FIRST_PRESET, from: null, requestKey: 'key-1' }])
    expect(saver.state.value).toEqual({ state: 'saved', version: 1 })
  })

  test('a change names the version it was made from; changed back, it is saved as it was', async () => {
    const { model, saver, sent } = saverWith(openedAt(4), {
      state: 'done',
      kept: keptAs(5, { ...FIRST_PRESET, name: 'Other' }),
    })
    expect(saver.state.value).toEqual({ state: 'saved', version: 4 })
    model.set('name', 'Other')
    expect(saver.state.value).toEqual({ state: 'unsaved', from: 4 })
    model.set('name', FIRST_PRESET.name)
    expect(saver.state.value).toEqual({ state: 'saved', version: 4 })
    model.set('name', 'Other')
    await saver.save()
    expect(sent[0]?.from).toBe(4)
    expect(saver.state.value).toEqual({ state: 'saved', version: 5 })
  })

  test('what is typed while a save travels is not taken for saved', async () => {
    const { model, saver } = saverWith(openedAt(1), { state: 'done', kept: keptAs(2) })
    const saving = saver.save()
    expect(saver.state.value).toEqual({ state: 'saving' })
    model.set('name', 'Typed meanwhile')
    await saving
    expect(saver.state.value).toEqual({ state: 'unsaved', from: 2 })
    expect(model.document.value.name).toBe('Typed meanwhile')
  })

  test('two presses at once are one save', async () => {
    const { saver, sent } = saverWith(openedAt(1), { state: 'done', kept: keptAs(2) })
    await Promise.all([saver.save(), saver.save()])
    expect(sent).toHaveLength(1)
  })

  test('a refusal stands with its issues until something is changed', async () => {
    const issues = [{ path: 'line.length', code: 'ask', text: '42 what?' }]
    const { model, saver, dropped } = saverWith(openedAt(1), { state: 'refused', issues })
    model.set('line.length', '42')
    await saver.save()
    expect(saver.state.value).toEqual({ state: 'refused', issues })
    expect(dropped).toEqual(['key-1'])
    model.set('line.length', '42 ft')
    expect(saver.state.value).toEqual({ state: 'unsaved', from: 1 })
  })

  test('without a connection it waits, and hears of the answer when it comes', async () => {
    const { saver, listeners } = saverWith(openedAt(1), { state: 'waiting', isKept: true })
    await saver.save()
    expect(saver.state.value).toEqual({ state: 'waiting', isKept: true })
    listeners.get('key-1')?.({ state: 'done', kept: keptAs(2) })
    expect(saver.state.value).toEqual({ state: 'saved', version: 2 })
  })

  test('a server in trouble loses nothing, and the next try goes from the same version', async () => {
    const { model, saver, sent } = saverWith(
      openedAt(1),
      { state: 'trouble' },
      { state: 'done', kept: keptAs(2) },
    )
    model.set('name', 'Typed')
    await saver.save()
    expect(saver.state.value).toEqual({ state: 'trouble' })
    expect(model.document.value.name).toBe('Typed')
    await saver.save()
    expect(sent.map(({ from }) => from)).toEqual([1, 1])
  })
})

describe('somebody else was faster', () => {
  test('theirs is kept beside mine, and what is made of both is saved on top of theirs', async () => {
    const theirs = keptAs(7, { ...FIRST_PRESET, name: 'Theirs' })
    const both = { ...FIRST_PRESET, name: 'Both' }
    const { model, saver, sent } = saverWith(
      openedAt(6),
      { state: 'conflict', current: theirs },
      { state: 'done', kept: keptAs(8, both) },
    )
    model.set('name', 'Mine')
    await saver.save()
    expect(saver.state.value).toEqual({ state: 'elsewhere', theirs })
    expect(model.document.value.name).toBe('Mine')
    await saver.saveOnTop(both, theirs)
    expect(sent[1]).toMatchObject({ from: 7, document: both })
    expect(saver.state.value).toEqual({ state: 'saved', version: 8 })
  })

  test('work made from an older version than the server has opens as two versions', () => {
    const theirs = keptAs(3, { ...FIRST_PRESET, name: 'Theirs' })
    const { saver } = saverWith({ ...openedAt(2), kept: theirs })
    expect(saver.state.value).toEqual({ state: 'elsewhere', theirs })
  })
})
