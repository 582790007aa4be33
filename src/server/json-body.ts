import type { Context } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { type AppEnv, refuse } from './api-error.ts'
import { shapeProblems } from './json-shape.ts'

/** A crossing file is a few kilobytes; a megabyte is somebody's mistake. */
const MOST_BYTES = 1024 * 1024

export const limitedBody = () =>
  bodyLimit({
    maxSize: MOST_BYTES,
    onError: (c: Context) =>
      refuse(c, 413, 'body-too-large', [
        { path: '', code: 'body-too-large', accepted: 'at most 1 MB', values: { maxBytes: MOST_BYTES } },
      ]),
  })

const isJson = (contentType: string | undefined) =>
  /^application\/([a-z0-9.+-]+\+)?json\s*(;|$)/i.test((contentType ?? '').trim())

/**
 * The body as parsed JSON, or the answer to give instead. Other content types are turned away before they are read: a
 * form on a foreign page can send those without asking first.
 */
export async function jsonBody(
  c: Context<AppEnv>,
): Promise<
  { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly answer: Response }
> {
  const contentType = c.req.header('Content-Type')
  if (!isJson(contentType)) {
    const given = contentType === undefined ? {} : { given: contentType.slice(0, 80) }
    return {
      ok: false,
      answer: refuse(c, 415, 'not-json', [
        { path: '', code: 'not-json', accepted: 'application/json', ...given },
      ]),
    }
  }
  const text = await c.req.text()
  try {
    const value: unknown = JSON.parse(text)
    const problems = shapeProblems(value)
    if (problems.length > 0) return { ok: false, answer: refuse(c, 422, 'refused', problems) }
    return { ok: true, value }
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error
    return {
      ok: false,
      answer: refuse(c, 400, 'bad-json', [{ path: '', code: 'not-json', accepted: 'JSON' }]),
    }
  }
}
