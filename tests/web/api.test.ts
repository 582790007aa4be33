import { afterEach, expect, test, vi } from 'vitest'
import { listCrossings } from '../../web/api.ts'

const answerWith = (...bodies: readonly unknown[]) => {
  const left = [...bodies]
  const asked: string[] = []
  vi.stubGlobal('fetch', async (path: string) => {
    asked.push(path)
    const body = left.shift()
    if (body instanceof Error) throw body
    return body instanceof Response ? body : Response.json(body)
  })
  return asked
}
const kept = (id: string, name: string) => ({ id, version: 1, demo: true, document: { name } })

afterEach(() => vi.unstubAllGlobals())

test('crossings are read page by page and listed by name', async () => {
  const asked = answerWith(
    { items: [kept('2', 'Willow')], next: '2' },
    { items: [kept('1', 'Alder')], next: null },
  )
  const answer = await listCrossings()
  expect(answer.state === 'answered' && answer.value.map(({ name }) => name)).toEqual(['Alder', 'Willow'])
  expect(asked).toEqual(['/api/crossings', '/api/crossings?after=2'])
})

test.each([
  ['no signal', new TypeError('Failed to fetch')],
  ['a server in trouble', new Response('no', { status: 500 })],
  ['an answer that is not JSON', new Response('<p>')],
  ['an answer of another shape', { crossings: [] }],
])('%s is one plain state', async (_what, body) => {
  answerWith(body)
  expect(await listCrossings()).toEqual({ state: 'failed' })
})

test('a mistake of ours is not taken for a lost connection', async () => {
  answerWith(new RangeError('ours'))
  await expect(listCrossings()).rejects.toThrow('ours')
})
