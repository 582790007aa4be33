import type { RefObject } from 'preact'
import { useLayoutEffect, useState } from 'preact/hooks'

/** The width of a box inside, as it is and as it becomes; 0 until it is known. */
export function useBoxWidth(box: RefObject<HTMLElement>): number {
  const [widthPx, setWidth] = useState(0)
  useLayoutEffect(() => {
    const element = box.current
    if (element === null) return
    setWidth(element.clientWidth)
    const watcher = new ResizeObserver(() => setWidth(element.clientWidth))
    watcher.observe(element)
    return () => watcher.disconnect()
  }, [box])
  return widthPx
}
