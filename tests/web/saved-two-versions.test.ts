import { expect, test } from 'vitest'
import { broughtTogether, differencesOf, linesOf } from '../../web/saved/two-versions.ts'

const base = { name: 'A', line: { length: '20 ft' }, tool: { diameter: '2 in' }, rates: 'example' }
const mine = { ...base, line: { length: '21 ft' }, tool: { diameter: '3 in' } }
const theirs = { name: 'B', line: { length: '22 ft' }, tool: { diameter: '2 in' } }
const differences = differencesOf(base, mine, theirs)

test('every key that differs is named once, with whose change it is', () => {
  expect(differences.map(({ key, kind }) => [key, kind])).toEqual([
    ['name', 'only-theirs'],
    ['line', 'choose'],
    ['tool', 'only-mine'],
    ['rates', 'only-theirs'],
  ])
})

test('changes of one side are taken over, a key they took out too; the rest is as chosen', () => {
  expect(broughtTogether(mine, theirs, differences, new Map([['line', 'theirs']]))).toEqual({
    name: 'B',
    line: { length: '22 ft' },
    tool: { diameter: '3 in' },
  })
  expect(broughtTogether(mine, theirs, differences, new Map())).toMatchObject({ line: { length: '21 ft' } })
})

test('when the version both came from is not known, every difference is a choice', () => {
  expect(new Set(differencesOf(null, mine, theirs).map(({ kind }) => kind))).toEqual(new Set(['choose']))
})

test('values are read as lines to compare', () => {
  expect(linesOf({ length: '20 ft' })).toEqual(['length 20 ft'])
  expect(linesOf([{ bore: '3/4 in', length: '50 ft' }])).toEqual(['1 bore 3/4 in, length 50 ft'])
  expect(linesOf(undefined)).toEqual([])
})
