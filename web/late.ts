import { useEffect, useState } from 'preact/hooks'

/** What has been fetched, by who fetches it: shown a second time, it is there at once. */
const fetched = new Map<unknown, unknown>()

/**
 * A part that the first screen can do without: fetched at once, but after it, and not when it is asked for, so that all
 * of it is there when the signal is gone. Null until then; `load` must be the same function each time.
 */
export function useLate<Part>(load: () => Promise<Part>): Part | null {
  const [, setFetched] = useState(fetched.has(load))
  useEffect(() => {
    if (fetched.has(load)) return
    load().then((found) => {
      fetched.set(load, found)
      setFetched(true)
    })
  }, [load])
  return fetched.has(load) ? (fetched.get(load) as Part) : null
}
