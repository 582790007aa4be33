import { tmpdir } from 'node:os'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { documentHistory, documentPage, keptDocument } from '../../shared/contracts/kept-document.ts'
import { PLAIN_NOUNS, type PlainNoun } from '../../shared/contracts/noun-files.ts'
import { buildApp } from '../../src/server/app.ts'
import type { OpenStore } from '../../src/store/open-store.ts'
import { DAY, EXAMPLES, OTHER } from '../support/noun-examples.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const ID = '00000000-0000-4000-8000-000000000001'

const LISTED_BY_OTHER: readonly PlainNoun[] = [
  'jobs',
  'people',
  'quotes',
  'days',
  'bore-logs',
  'sign-offs',
  'attachments',
  'parts',
  'inspections',
]
const LISTED_BY_DAY: readonly PlainNoun[] = [
  'jobs',
  'quotes',
  'days',
  'bore-logs',
  'sign-offs',
  'inspections',
]

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  let store: OpenStore
  let app: ReturnType<typeof buildApp>
  const logged: string[] = []
  beforeAll(async () => {
    places = await makePlaces()
    store = await openAt(await places.fresh())
    app = buildApp({
      store,
      webRoot: tmpdir(),
      hosts: [],
      now: () => new Date('2026-03-02T09:00:00Z'),
      log: (line) => logged.push(line),
    })
  }, 60_000)
  afterAll(async () => {
    await store.close()
    await places.end()
    expect(logged).toEqual([])
  })

  const send = (method: string, path: string, document: unknown, version: number | null = null) =>
    app.request(`/api/${path}`, {
      method,
      ...(document === null ? {} : { body: JSON.stringify(document) }),
      headers: {
        ...(document === null ? {} : { 'Content-Type': 'application/json' }),
        ...(version === null ? {} : { 'If-Match': `"${version}"` }),
      },
    })

  test.each(PLAIN_NOUNS)('%s are kept, listed, changed, removed and brought back', async (noun) => {
    const document = EXAMPLES[noun]
    const path = `${noun}/${ID}`
    const created = await send('PUT', path, document)
    expect(created.status).toBe(201)
    expect(keptDocument.parse(await created.json())).toMatchObject({ document, version: 1, demo: false })
    expect((await send('PUT', path, document)).status).toBe(200)
    expect((await send('PUT', path, { ...document, name: 'other' })).status).toBe(428)
    const second = { ...document, name: 'second' }
    expect((await send('PUT', path, second, 1)).status).toBe(200)
    const lost = await send('PUT', path, { ...document, name: 'third' }, 1)
    expect(lost.status).toBe(409)
    expect(keptDocument.parse((await lost.json()).current).name).toBe('second')
    const listed = async (query: string) =>
      documentPage
        .parse(await (await app.request(`/api/${noun}${query}`)).json())
        .items.map((item) => item.id)
    expect(await listed('')).toEqual([ID])
    expect(await listed(`?of=${OTHER}`)).toEqual(LISTED_BY_OTHER.includes(noun) ? [ID] : [])
    expect(await listed(`?on=${DAY}`)).toEqual(LISTED_BY_DAY.includes(noun) ? [ID] : [])
    expect(await listed(`?of=${ID}`)).toEqual([])
    expect((await send('DELETE', path, null, 2)).status).toBe(200)
    expect((await app.request(`/api/${path}`)).status).toBe(404)
    expect(await listed('?removed=true')).toEqual([ID])
    expect((await send('POST', `${path}/restore`, null, 3)).status).toBe(200)
    expect(keptDocument.parse(await (await app.request(`/api/${path}`)).json()).document).toEqual(second)
    const history = documentHistory.parse(await (await app.request(`/api/${path}/history`)).json())
    expect(history.items.map(({ action }) => action)).toEqual(['insert', 'replace', 'remove', 'restore'])
  })

  test.each(PLAIN_NOUNS)('of %s what is not one is refused, with every problem', async (noun) => {
    const path = `${noun}/${OTHER}`
    const document: Record<string, unknown> = { ...EXAMPLES[noun], unheardOf: 1 }
    delete document.name
    const answer = await send('PUT', path, document)
    expect(answer.status).toBe(422)
    const { issues } = await answer.json()
    expect(issues).toContainEqual(expect.objectContaining({ path: 'name', code: 'required' }))
    expect(issues).toContainEqual(expect.objectContaining({ path: 'unheardOf', code: 'unknown-key' }))
    for (const given of [[], 'text', null, 3])
      expect((await send('PUT', path, given === null ? 'null' : given)).status).toBe(422)
    const format = await send('PUT', path, { ...EXAMPLES[noun], schema: 'underlane/other@1' })
    expect(format.status).toBe(422)
  })

  test('a list asked for by what is no id and no day', async () => {
    for (const query of ['of=x', 'on=2026-02-30', 'on=x']) {
      const answer = await app.request(`/api/jobs?${query}`)
      expect(answer.status).toBe(400)
      expect((await answer.json()).issues).toHaveLength(1)
    }
  })
})
