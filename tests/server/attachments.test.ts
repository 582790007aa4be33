import { createHash } from 'node:crypto'
import { tmpdir } from 'node:os'
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { buildApp } from '../../src/server/app.ts'
import type { OpenStore } from '../../src/store/open-store.ts'
import { PLAIN, photoOfATelephone } from '../support/photos.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const OTHER = '00000000-0000-4000-8000-000000000002'
const PLACE = 'N 38.0293 W 78.4767'
const hashOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex')

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  let store: OpenStore
  let app: ReturnType<typeof buildApp>
  let used = 0
  let path = ''
  const logged: string[] = []
  beforeAll(async () => {
    places = await makePlaces()
    store = await openAt(await places.fresh())
    const now = () => new Date('2026-03-02T09:00:00Z')
    app = buildApp({ store, webRoot: tmpdir(), hosts: [], now, log: (line) => logged.push(line) })
  }, 60_000)
  afterAll(async () => {
    await store.close()
    await places.end()
    expect(logged).toEqual([])
  })
  beforeEach(() => {
    path = `/api/attachments/00000000-0000-4000-8000-${String(++used).padStart(12, '0')}`
  })

  const announce = (bytes: Uint8Array, mediaType = 'image/jpeg', name = 'marks.jpg') =>
    app.request(path, {
      method: 'PUT',
      body: JSON.stringify({ name, of: OTHER, mediaType, byteCount: bytes.length, sha256: hashOf(bytes) }),
      headers: { 'Content-Type': 'application/json' },
    })
  const send = (bytes: Uint8Array, mediaType = 'image/jpeg') =>
    app.request(`${path}/content`, {
      method: 'PUT',
      body: new Uint8Array(bytes),
      headers: { 'Content-Type': mediaType },
    })
  const both = async (bytes: Uint8Array, mediaType: string) => {
    expect((await announce(bytes, mediaType)).status).toBe(201)
    return send(bytes, mediaType)
  }

  test('bytes are taken once they are what was announced, and given back as a file to save', async () => {
    const bytes = PLAIN['image/jpeg']
    expect((await send(bytes)).status).toBe(404)
    await announce(bytes, 'image/jpeg', 'Ñandú "3"\r\n/../marks')
    expect((await app.request(`${path}/content`)).status).toBe(404)
    expect((await send(bytes, 'text/plain')).status).toBe(415)
    const other = await send(bytes.subarray(1))
    expect(other.status).toBe(422)
    expect((await other.json()).issues).toMatchObject([{ path: 'sha256', code: 'inputs-conflict' }])
    expect((await send(PLAIN['image/png'])).status).toBe(422)
    expect((await send(new Uint8Array(20 * 1024 * 1024 + 1))).status).toBe(413)
    for (let times = 0; times < 2; times++) {
      const answer = await send(bytes)
      expect(answer.status).toBe(200)
      expect(await answer.json()).toEqual({ sha256: hashOf(bytes), byteCount: bytes.length, version: 1 })
    }
    const answer = await app.request(`${path}/content`)
    expect(answer.status).toBe(200)
    expect(Buffer.from(await answer.arrayBuffer())).toEqual(bytes)
    expect(answer.headers.get('Content-Type')).toBe('image/jpeg')
    expect(answer.headers.get('X-Content-Type-Options')).toBe('nosniff')
    const name = answer.headers.get('Content-Disposition') ?? ''
    expect(name).toMatch(/^attachment; filename\*=UTF-8''[\w.%-]+$/)
    expect(decodeURIComponent(name.split("''")[1] ?? '')).toBe('Ñandú _3____.._marks.jpg')
  })

  test('of a photo the place is not kept, and the attachment speaks of what is', async () => {
    const sent = photoOfATelephone('image/jpeg', 6, PLACE)
    const answer = await both(sent, 'image/jpeg')
    expect(answer.status).toBe(200)
    const kept = await answer.json()
    expect(kept).toMatchObject({ version: 2 })
    const given = Buffer.from(await (await app.request(`${path}/content`)).arrayBuffer())
    expect(given.toString('latin1')).not.toContain('38.0293')
    expect({ sha256: hashOf(given), byteCount: given.length, version: 2 }).toEqual(kept)
    expect((await (await app.request(path)).json()).document).toMatchObject({
      name: 'marks.jpg',
      sha256: kept.sha256,
      byteCount: given.length,
    })
    // A telephone that heard no answer sends the same again.
    expect(await (await send(sent)).json()).toEqual(kept)
    expect(await (await send(given)).json()).toEqual(kept)
    const history = await (await app.request(`${path}/history`)).json()
    expect(history.items.map((line: { action: string }) => line.action)).toEqual(['insert', 'replace'])
    expect(await store.contents.find(hashOf(sent))).toBeNull()
  })

  test.each([
    ['a drawing that can run', 'image/svg+xml', '<svg xmlns="http://www.w3.org/2000/svg"/>'],
    ['a page', 'text/html', '<script>alert(1)</script>'],
    ['a moving picture', 'image/gif', 'GIF89a\x01\0\x01\0\0\0\0'],
    ['a program', 'application/octet-stream', '\x7fELF'],
    ['a page under the name of a picture', 'image/jpeg', '<html><script>alert(1)</script></html>'],
    ['a drawing under the name of a picture', 'image/png', '<svg onload="x()"/>'],
  ])('%s is refused, and no byte of it kept', async (_what, mediaType, text) => {
    const bytes = Buffer.from(text, 'latin1')
    const answer = await both(bytes, mediaType)
    expect(answer.status).toBe(415)
    expect(await answer.json()).toMatchObject({ code: 'wrong-media-type', issues: [{ path: '' }] })
    expect((await app.request(`${path}/content`)).status).toBe(404)
    expect(await store.contents.find(hashOf(bytes))).toBeNull()
  })

  test.each([
    ['cut off', PLAIN['image/png'].subarray(0, 90), 'damaged-file'],
    [
      'a page as well',
      Buffer.concat([PLAIN['image/png'], Buffer.from('<script>x</script>')]),
      'two-kinds-of-file',
    ],
  ])('a picture that is %s is refused, and no byte of it kept', async (_what, bytes, code) => {
    const answer = await both(bytes, 'image/png')
    expect(answer.status).toBe(422)
    expect((await answer.json()).issues).toMatchObject([{ code }])
    expect(await store.contents.find(hashOf(bytes))).toBeNull()
  })
})
