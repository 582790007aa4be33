import { createHash } from 'node:crypto'
import { Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { attachmentFile, MOST_ATTACHMENT_BYTES } from '../../../shared/contracts/attachment.ts'
import type { Issue } from '../../../shared/core/outcome.ts'
import type { Stores } from '../../store/open-store.ts'
import { type AppEnv, refuse } from '../api-error.ts'

const tooLarge: Issue = {
  path: '',
  code: 'body-too-large',
  accepted: 'at most 20 MB',
  values: { maxBytes: MOST_ATTACHMENT_BYTES },
}

/** What a browser shows and never runs. */
const INERT = /^(image\/(jpeg|png|webp|heic|gif|tiff)|application\/pdf)$/

/** What an attachment says of its bytes; null when there is no such attachment. */
async function saidOf({ attachments }: Stores, id: string) {
  const found = await attachments.find(id.toLowerCase())
  return found === null ? null : (attachmentFile.safeParse(found.document).data ?? null)
}

/**
 * The bytes an attachment speaks of. They are known by their hash, so sending them twice keeps them once and nothing can be
 * written over.
 */
export const contentRoutes = (store: Stores) =>
  new Hono<AppEnv>()
    .put(
      '/:id/content',
      bodyLimit({
        maxSize: MOST_ATTACHMENT_BYTES,
        onError: (c) => refuse(c, 413, 'body-too-large', [tooLarge]),
      }),
      async (c) => {
        const said = await saidOf(store, c.req.param('id'))
        if (said === null) return refuse(c, 404, 'not-found')
        // A form on a foreign page can send three types without asking first; none of them is what was announced.
        const given = c.req.header('Content-Type') ?? ''
        if (
          given.toLowerCase() !== said.mediaType ||
          /^(text\/plain|multipart|application\/x-www)/.test(given)
        ) {
          const issue: Issue = {
            path: '',
            code: 'wrong-type',
            given: given.slice(0, 80),
            accepted: said.mediaType,
          }
          return refuse(c, 415, 'wrong-media-type', [issue])
        }
        const bytes = new Uint8Array(await c.req.arrayBuffer())
        const sha256 = createHash('sha256').update(bytes).digest('hex')
        if (sha256 !== said.sha256 || bytes.length !== said.byteCount) {
          return refuse(c, 422, 'refused', [{ path: 'sha256', code: 'inputs-conflict', given: sha256 }])
        }
        await store.contents.put(bytes)
        return c.json({ sha256, byteCount: bytes.length }, 200)
      },
    )
    .get('/:id/content', async (c) => {
      const said = await saidOf(store, c.req.param('id'))
      const bytes = said === null ? null : await store.contents.find(said.sha256)
      if (said === null || bytes === null) return refuse(c, 404, 'not-found')
      // Somebody else's bytes: a file to keep, never a page or a program of ours.
      c.header('Content-Disposition', 'attachment')
      c.header('Content-Type', INERT.test(said.mediaType) ? said.mediaType : 'application/octet-stream')
      c.header('ETag', `"${said.sha256}"`)
      return c.body(new Uint8Array(bytes), 200)
    })
