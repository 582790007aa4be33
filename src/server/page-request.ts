import { z } from 'zod'
import type { Issue } from '../../shared/core/outcome.ts'

const DEFAULT_LIMIT = 100
const MOST_AT_ONCE = 500

const limitText = z.string().regex(/^\d{1,4}$/)

/** What a cursor looks like, and what it is read as. */
type CursorKind<Cursor> = { readonly read: (text: string) => Cursor | null }

export const AFTER_ID: CursorKind<string> = {
  read: (text) => z.guid().safeParse(text).data?.toLowerCase() ?? null,
}
export const AFTER_VERSION: CursorKind<number> = {
  read: (text) => (/^\d{1,9}$/.test(text) ? Number(text) : null),
}

/** `after` and `limit` of an address, or what is wrong with them. */
export function pageRequest<Cursor>(
  { after, limit }: Readonly<Record<string, string | undefined>>,
  cursor: CursorKind<Cursor>,
):
  | { readonly ok: true; readonly page: { readonly after: Cursor | null; readonly limit: number } }
  | { readonly ok: false; readonly issues: readonly Issue[] } {
  const issues: Issue[] = []
  const from = after === undefined ? null : cursor.read(after)
  if (after !== undefined && from === null) {
    issues.push({
      path: 'after',
      code: 'wrong-type',
      given: after.slice(0, 64),
      accepted: 'the `next` of a page',
    })
  }
  if (limit !== undefined && !limitText.safeParse(limit).success) {
    issues.push({ path: 'limit', code: 'wrong-type', given: limit.slice(0, 64), accepted: 'a whole number' })
  } else if (limit !== undefined && (Number(limit) < 1 || Number(limit) > MOST_AT_ONCE)) {
    issues.push({
      path: 'limit',
      code: 'out-of-range',
      given: limit,
      values: { min: 1, max: MOST_AT_ONCE },
    })
  }
  if (issues.length > 0) return { ok: false, issues }
  return { ok: true, page: { after: from, limit: Number(limit ?? DEFAULT_LIMIT) } }
}
