import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mergeDocuments } from '../../shared/contracts/merge-documents.ts'

const BASE = {
  name: 'Alder Road 14',
  line: { length: '42 ft' },
  ground: [{ word: 'clay' }],
  rates: 'example',
}

describe('two changes of one document', () => {
  test('to different keys are both taken', () => {
    const mine = { ...BASE, name: 'Alder Road 16' }
    const theirs = { ...BASE, line: { length: '44 ft' } }
    expect(mergeDocuments(BASE, mine, theirs)).toEqual({
      merged: { ...BASE, name: 'Alder Road 16', line: { length: '44 ft' } },
      conflicts: [],
    })
  })

  test('to one key in two ways are named, and mine stands until somebody chooses', () => {
    const { merged, conflicts } = mergeDocuments(BASE, { ...BASE, name: 'a' }, { ...BASE, name: 'b' })
    expect(conflicts).toEqual(['name'])
    expect(merged.name).toBe('a')
  })

  test('to one key in the same way are no conflict, whatever the order of keys', () => {
    const mine = { ...BASE, tool: { diameter: '2.5 in', length: '4 ft' } }
    const theirs = { ...BASE, tool: { length: '4 ft', diameter: '2.5 in' } }
    expect(mergeDocuments(BASE, mine, theirs)).toEqual({ merged: mine, conflicts: [] })
  })

  test('the order of a list is a change', () => {
    const mine = { ...BASE, ground: [{ word: 'sand' }, { word: 'clay' }] }
    const theirs = { ...BASE, ground: [{ word: 'clay' }, { word: 'sand' }] }
    expect(mergeDocuments(BASE, mine, theirs).conflicts).toEqual(['ground'])
  })

  test('a key taken out stays out; taken out here and changed there is a conflict', () => {
    const { rates: _rates, ...without } = BASE
    expect(mergeDocuments(BASE, without, BASE).merged).toEqual(without)
    expect(mergeDocuments(BASE, BASE, without).merged).toEqual(without)
    const changed = { ...BASE, rates: 'own' }
    expect(mergeDocuments(BASE, without, changed)).toEqual({ merged: without, conflicts: ['rates'] })
    expect(mergeDocuments(BASE, changed, without)).toEqual({ merged: changed, conflicts: ['rates'] })
  })

  test('a list is not an object with the same keys', () => {
    const mine = { ...BASE, ground: { 0: { word: 'clay' } } }
    expect(mergeDocuments(BASE, mine, BASE).merged.ground).toEqual({ 0: { word: 'clay' } })
  })

  test('keys of every object are keys like others', () => {
    const theirs = JSON.parse('{"name":"x","__proto__":{"polluted":1},"toString":"y"}')
    const { merged } = mergeDocuments({ name: 'x' }, { name: 'x' }, theirs)
    expect(Object.keys(merged).sort()).toEqual(['__proto__', 'name', 'toString'])
    expect('polluted' in {}).toBe(false)
  })
})

describe('for any documents', () => {
  const document = fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), fc.jsonValue({ maxDepth: 2 }))

  test('one side unchanged gives the other, without conflict', () => {
    fc.assert(
      fc.property(document, document, (base, other) => {
        expect(mergeDocuments(base, base, other)).toEqual({ merged: other, conflicts: [] })
        expect(mergeDocuments(base, other, base)).toEqual({ merged: other, conflicts: [] })
      }),
    )
  })

  test('each key is as one side has it, and a conflict is one seen from either side', () => {
    fc.assert(
      fc.property(document, document, document, (base, mine, theirs) => {
        const { merged, conflicts } = mergeDocuments(base, mine, theirs)
        for (const key of ['a', 'b', 'c', 'd']) {
          expect([JSON.stringify(mine[key]), JSON.stringify(theirs[key])]).toContain(
            JSON.stringify(merged[key]),
          )
        }
        expect(conflicts.sort()).toEqual(mergeDocuments(base, theirs, mine).conflicts.sort())
      }),
    )
  })
})
