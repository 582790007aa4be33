import { type Context, Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { MOST_ATTACHMENT_BYTES } from '../../../shared/contracts/attachment.ts'
import type { Issue } from '../../../shared/core/outcome.ts'
import type { Stores } from '../../store/open-store.ts'
import { actOf } from '../act.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { attachmentOf, type Received, receiveContent } from '../attachments/receive-content.ts'
import { KEPT_TYPES } from '../attachments/what-is-kept.ts'

const tooLarge: Issue = {
  path: '',
  code: 'body-too-large',
  accepted: 'at most 20 MB',
  values: { maxBytes: MOST_ATTACHMENT_BYTES },
}

const EXTENSIONS: Readonly<Record<string, string>> = {
  'image/jpeg': '.jpg',
  'image/png': '.png',
  'image/webp': '.webp',
  'application/pdf': '.pdf',
}

/** Somebody else's bytes: a file to keep, under the name they gave it, never a page or a program of ours. */
function disposition(name: string, mediaType: string): string {
  const extension = EXTENSIONS[mediaType] ?? '.bin'
  const plain = name.replace(/[^\p{L}\p{N} ._-]/gu, '_')
  const whole = plain.toLowerCase().endsWith(extension) ? plain : `${plain}${extension}`
  return `attachment; filename*=UTF-8''${encodeURIComponent(whole)}`
}

type Fault = Extract<Received, { ok: false }>['fault']

function answerFault(c: Context<AppEnv>, fault: Fault) {
  const is = (issue: Omit<Issue, 'path'>): Issue => ({ path: '', ...issue })
  switch (fault) {
    case 'absent':
      return refuse(c, 404, 'not-found')
    case 'changed':
      return refuse(c, 409, 'conflict')
    case 'another-type':
      return refuse(c, 415, 'wrong-media-type', [is({ code: 'damaged-file' })])
    case 'not-the-bytes':
      return refuse(c, 422, 'refused', [{ path: 'sha256', code: 'inputs-conflict' }])
    case 'moving':
      return refuse(c, 422, 'refused', [is({ code: 'wrong-type', accepted: 'a still picture' })])
    case 'too-large':
      return refuse(c, 422, 'refused', [
        is({ code: 'body-too-large', accepted: 'at most 200 million points' }),
      ])
    case 'damaged':
      return refuse(c, 422, 'refused', [is({ code: 'damaged-file' })])
    case 'two-kinds':
      return refuse(c, 422, 'refused', [is({ code: 'two-kinds-of-file' })])
  }
}

/** Only what was announced, and of what was announced only pictures and papers. */
async function wrongType(c: Context<AppEnv>, store: Stores): Promise<Response | null> {
  const found = await attachmentOf(store, c.req.param('id') ?? '')
  if (found === null) return refuse(c, 404, 'not-found')
  const given = (c.req.header('Content-Type') ?? '').toLowerCase()
  const { mediaType } = found.said
  if (given === mediaType && KEPT_TYPES.includes(mediaType)) return null
  const accepted = KEPT_TYPES.includes(mediaType) ? mediaType : 'a picture (JPEG, PNG, WebP) or a PDF'
  return refuse(c, 415, 'wrong-media-type', [
    { path: '', code: 'wrong-type', given: given.slice(0, 80), accepted },
  ])
}

/**
 * The bytes an attachment speaks of. They are known by their hash, so sending them twice keeps them once and nothing can be
 * written over.
 */
export const contentRoutes = (store: Stores, now: () => Date) =>
  new Hono<AppEnv>()
    .put(
      '/:id/content',
      bodyLimit({
        maxSize: MOST_ATTACHMENT_BYTES,
        onError: (c) => refuse(c, 413, 'body-too-large', [tooLarge]),
      }),
      async (c) => {
        const refusal = await wrongType(c, store)
        if (refusal !== null) return refusal
        const how = actOf(c, now())
        if (!how.ok) return refuse(c, 400, 'bad-request', how.issues)
        const bytes = new Uint8Array(await c.req.arrayBuffer())
        // A key is for one change; this may be none, and is the same however often it is sent.
        const act = { ...how.asked.act, requestKey: null }
        const received = await receiveContent(store, c.req.param('id'), bytes, act)
        if (!received.ok) return answerFault(c, received.fault)
        const { sha256, byteCount, version } = received
        return c.json({ sha256, byteCount, version }, 200)
      },
    )
    .get('/:id/content', async (c) => {
      const found = await attachmentOf(store, c.req.param('id'))
      const bytes = found === null ? null : await store.contents.find(found.said.sha256)
      if (found === null || bytes === null) return refuse(c, 404, 'not-found')
      const { name, mediaType, sha256 } = found.said
      c.header('Content-Disposition', disposition(name, mediaType))
      c.header('Content-Type', KEPT_TYPES.includes(mediaType) ? mediaType : 'application/octet-stream')
      c.header('ETag', `"${sha256}"`)
      return c.body(new Uint8Array(bytes), 200)
    })
