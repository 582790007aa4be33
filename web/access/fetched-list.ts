import { useEffect, useState } from 'preact/hooks'
import type { z } from 'zod'
import { askAccess } from './access-requests.ts'

/** A list of the server's, fetched when the part that shows it appears, and again when asked to. */
export function useFetchedList<Item>(
  path: string,
  schema: z.ZodType<{ readonly items: readonly Item[] }>,
): { readonly items: readonly Item[]; readonly again: () => Promise<void> } {
  const [items, setItems] = useState<readonly Item[]>([])
  const again = async () => {
    const answer = await askAccess('GET', path, schema)
    if (answer.state === 'done') setItems(answer.value.items)
  }
  useEffect(() => void again(), [path])
  return { items, again }
}
