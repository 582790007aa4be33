import { useEffect, useState } from 'preact/hooks'

/**
 * A part that the first screen can do without: fetched at once, but after it, and not when it is asked for, so that all
 * of it is there when the signal is gone. Null until then; `load` must be the same function each time.
 */
export function useLate<Part>(load: () => Promise<Part>): Part | null {
  const [part, setPart] = useState<{ readonly found: Part } | null>(null)
  useEffect(() => {
    load().then((found) => setPart({ found }))
  }, [load])
  return part === null ? null : part.found
}
