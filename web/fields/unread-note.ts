import { recallHere, rememberHere } from '../state/browser-memory.ts'
import type { Path } from '../state/document-path.ts'
import { isObject, type Json, parseObject } from '../state/json.ts'

/** What stands in a field and is nothing the file can hold, by the address of the page and the place in the file. */
const KEY = 'underlane.unread'

const keyOf = (path: Path): string => `${location.pathname} ${path}`
const all = () => parseObject(recallHere(KEY) ?? '') ?? {}
const keepAll = (notes: Readonly<Record<string, Json>>) =>
  rememberHere(KEY, Object.keys(notes).length === 0 ? null : JSON.stringify(notes))

/** Kept through a reload and a look at another page; null: nothing is unread any more. */
export function keepUnread(path: Path, text: string | null, beside: Json | undefined): void {
  const { [keyOf(path)]: _former, ...others } = all()
  keepAll(
    text === null ? others : { ...others, [keyOf(path)]: { text, beside: JSON.stringify(beside ?? null) } },
  )
}

/** What was left unread there, if what the file holds in that place is still what it was typed over. */
export function unreadAt(path: Path, beside: Json | undefined): string {
  const kept = all()[keyOf(path)]
  if (kept === undefined || !isObject(kept) || typeof kept.text !== 'string') return ''
  return kept.beside === JSON.stringify(beside ?? null) ? kept.text : ''
}

/** Another crossing stands on the page of this address. */
export function forgetUnread(pathname: string): void {
  keepAll(Object.fromEntries(Object.entries(all()).filter(([key]) => !key.startsWith(`${pathname} `))))
}
