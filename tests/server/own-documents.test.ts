import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { newTokenAnswer } from '../../shared/contracts/access.ts'
import type { NounPath } from '../../src/store/nouns.ts'
import type { OpenStore } from '../../src/store/open-store.ts'
import { demoDocument } from '../support/crossings.ts'
import { EXAMPLES } from '../support/noun-examples.ts'
import { type Client, type Office, officeOver } from '../support/office.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const CROSSING = { ...demoDocument('firm-clay-service'), name: 'a crossing' }
const version = (at: number) => ({ 'If-Match': `"${at}"` })

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  let store: OpenStore
  let office: Office
  let owner: Client
  beforeAll(async () => {
    places = await makePlaces()
    store = await openAt(await places.fresh())
    office = officeOver(store)
    owner = await office.owner()
  }, 60_000)
  afterAll(async () => {
    expect(office.logged).toEqual([])
    await store.close()
    await places.end()
  })

  const somebody = () => ({ who: 'somebody', at: office.at, from: 'test', requestKey: null })
  const insert = (noun: NounPath, id: string, document: { name: string }) =>
    store[noun].insert({ id, document, made: null, demo: false }, somebody())
  async function othersCrossing(): Promise<string> {
    const id = randomUUID()
    await insert('crossings', id, CROSSING)
    return id
  }

  test('an id that is written another way is no way round', async () => {
    const id = await othersCrossing()
    const lead = await office.member(owner, 'crew-lead', 'len')
    for (const written of [
      id.toUpperCase(),
      `%${id.charCodeAt(0).toString(16)}${id.slice(1)}`,
      `${id}%20`,
      `./${id}`,
    ]) {
      for (const tail of [written, `${written}/`, `../crossings/${written}`]) {
        const { status } = await lead.send('PUT', `/api/crossings/${tail}`, CROSSING, version(1))
        expect([400, 403, 404], `${tail} ${status}`).toContain(status)
      }
    }
    expect((await store.crossings.find(id))?.version).toBe(1)
  })

  describe('what is assigned is one’s own', () => {
    test('a crossing on a day of one’s crew, its logs and the day; not the day of another crew', async () => {
      const [person, card, crew, foreign] = [randomUUID(), randomUUID(), randomUUID(), randomUUID()]
      await insert('people', person, { name: 'Lee' })
      await insert('people', card, Object.assign({ name: 'Kim' }, { crew }))
      await insert('crews', crew, Object.assign({ name: 'North' }, { people: [person] }))
      await insert('crews', foreign, { name: 'South' })
      const mine = await othersCrossing()
      const theirs = await othersCrossing()
      const day = randomUUID()
      const theirDay = randomUUID()
      const onDay = (id: string, of: string, crossing: string) =>
        insert(
          'days',
          id,
          Object.assign({ name: 'Monday' }, { on: '2026-03-02', crew: of, crossings: [crossing] }),
        )
      await onDay(day, crew, mine)
      await onDay(theirDay, foreign, theirs)
      const log = randomUUID()
      await insert(
        'bore-logs',
        log,
        Object.assign({ name: 'log' }, { ...EXAMPLES['bore-logs'], crossing: mine }),
      )
      for (const [login, who] of [
        ['lee', person],
        ['kim', card],
      ] as const) {
        const lead = await office.member(owner, 'crew-lead', login, who)
        const put = async (path: string, document: unknown, at: number) =>
          (await lead.send('PUT', `/api/${path}`, document, version(at))).status
        const at = async (noun: NounPath, id: string) => (await store[noun].find(id))?.version ?? 0
        const put1 = async (noun: NounPath, id: string, document: unknown) =>
          put(`${noun}/${id}`, document, await at(noun, id))
        expect(await put1('crossings', mine, CROSSING)).toBe(200)
        expect(await put1('crossings', theirs, CROSSING)).toBe(403)
        expect(await put1('bore-logs', log, { ...EXAMPLES['bore-logs'], crossing: mine })).toBe(200)
        const monday = { name: 'Monday', on: '2026-03-02', crew, crossings: [mine] }
        expect(await put1('days', day, monday)).toBe(200)
        expect(await put1('days', theirDay, monday)).toBe(403)
        // Nobody makes a crossing theirs by putting it on a day of their own.
        expect(await put1('days', day, { ...monday, crossings: [mine, theirs] })).toBe(403)
        const fresh = await lead.send('PUT', `/api/days/${randomUUID()}`, { ...monday, crossings: [theirs] })
        expect(fresh.status).toBe(403)
      }
      const stranger = await office.member(owner, 'crew-lead', 'max')
      expect((await stranger.send('PUT', `/api/crossings/${mine}`, CROSSING, version(3))).status).toBe(403)
    })
  })

  test('a change is in the history under the login of whoever made it, or the name of the script', async () => {
    const id = randomUUID()
    await (await office.member(owner, 'estimator', 'estimator')).send('PUT', `/api/jobs/${id}`, EXAMPLES.jobs)
    const made = newTokenAnswer.parse(
      (await owner.post('/api/tokens', { name: 'night job', role: 'estimator' })).body,
    )
    const script = office.stranger({ Authorization: `Bearer ${made.token}` })
    expect(
      (await script.send('PUT', `/api/jobs/${id}`, { ...EXAMPLES.jobs, name: 'b' }, version(1))).status,
    ).toBe(200)
    const { items } = await store.jobs.history(id, { after: null, limit: 9 })
    expect(items.map(({ who }) => who)).toEqual([
      'estimator',
      `token night job (${made.item.id.slice(0, 8)})`,
    ])
  })
})
