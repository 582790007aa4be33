// @vitest-environment happy-dom
import { beforeEach, describe, expect, test } from 'vitest'
import { FIRST_PRESET, PRESETS } from '../../web/crossings/presets.ts'
import { bringIn, broughtIn, type ImportDoors } from '../../web/saved/bring-in.ts'
import { readFiles } from '../../web/saved/import-files.ts'
import type { JsonObject } from '../../web/state/json.ts'
import { keptAs } from './saved-kept.ts'

const file = (name: string, content: unknown): File =>
  new File([typeof content === 'string' ? content : JSON.stringify(content)], name)
const good = (name: string): JsonObject => ({ ...FIRST_PRESET, name })

describe('files with crossings', () => {
  test('each bad one has its sentence, and stops no other', async () => {
    const { found, bad } = await readFiles([
      file('a.json', good('A')),
      file('text.json', 'hello'),
      file('plan.json', { schema: 'underlane/plan@1' }),
      file('number.json', '7'),
      file('empty.json', ''),
      file('half.json', { ...good('Half'), line: { length: 42 } }),
    ])
    expect(found.map(({ from }) => from)).toEqual(['a.json'])
    expect(bad.map(({ from }) => from)).toEqual([
      'text.json',
      'plan.json',
      'number.json',
      'empty.json',
      'half.json',
    ])
    expect(bad.every(({ sentence }) => /[a-z].*[.?)]$/.test(sentence))).toBe(true)
    expect(bad.map(({ document }) => document !== null)).toEqual([false, false, false, false, true])
  })

  test('a list, lines, and a byte order mark are read as they are', async () => {
    const all = PRESETS.map(({ document }) => document)
    const lines = all.map((each) => JSON.stringify(each)).join('\r\n')
    for (const content of [JSON.stringify(all), lines, `\uFEFF${JSON.stringify(all)}`]) {
      const { found, bad } = await readFiles([file('all.json', content)])
      expect(found.map(({ document }) => document)).toEqual(all)
      expect(bad).toEqual([])
    }
  })

  test('a single one that cannot be planned yet is handed on, to be mended where it opens', async () => {
    expect(await readFiles([file('half.json', { name: 'Half' })])).toEqual({
      found: [{ from: 'half.json', document: { name: 'Half' } }],
      bad: [],
    })
  })
})

describe('bringing them in', () => {
  beforeEach(() => {
    broughtIn.value = null
  })
  const doors = (answers: readonly ('done' | 'trouble')[] = []) => {
    const opened: JsonObject[] = []
    const saved: JsonObject[] = []
    const left = [...answers]
    const made: ImportDoors = {
      open: (document) => opened.push(document),
      save: async ({ document }) => {
        saved.push(document)
        return left.shift() === 'trouble'
          ? { state: 'trouble' }
          : { state: 'done', kept: keptAs(1, document) }
      },
      whenSaved: () => {},
    }
    return { made, opened, saved }
  }

  test('one is opened, not saved', async () => {
    const { made, opened, saved } = doors()
    await bringIn([file('a.json', good('A'))], made)
    expect([opened, saved, broughtIn.value]).toEqual([[good('A')], [], null])
  })

  test('many are saved, each under an id of its own; one that fails is named', async () => {
    const { made, opened, saved } = doors(['done', 'trouble', 'done'])
    await bringIn(
      ['A', 'B', 'C'].map((name) => file(`${name}.json`, good(name))),
      made,
    )
    expect(opened).toEqual([])
    expect(saved).toHaveLength(3)
    expect(broughtIn.value).toMatchObject({ state: 'done', saved: 2, bad: [{ from: 'B.json' }] })
  })
})
