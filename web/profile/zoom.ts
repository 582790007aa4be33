/** How often larger than fitted to the page. */
export const FITTED = 1
export const MOST_ZOOM = 8
const STEP = 1.5

export const limitedZoom = (wanted: number): number =>
  Math.min(MOST_ZOOM, Math.max(FITTED, Math.round(wanted * 100) / 100))

export const zoomedIn = (zoom: number): number => limitedZoom(zoom * STEP)
export const zoomedOut = (zoom: number): number => limitedZoom(zoom / STEP)

/** What a key does to the zoom; null for other keys. */
export function zoomAfterKey(key: string, zoom: number): number | null {
  if (key === '+' || key === '=') return zoomedIn(zoom)
  if (key === '-' || key === '_') return zoomedOut(zoom)
  return key === '0' ? FITTED : null
}

/** A turn of the wheel; a page of it is about one step. */
export const zoomAfterWheel = (deltaY: number, zoom: number): number =>
  limitedZoom(zoom * STEP ** Math.max(-1, Math.min(1, -deltaY / 100)))

/**
 * Where to scroll so that the same place stays under the same point of the view. What lies before `originPx` keeps its
 * size: the words over the ground.
 */
export const scrollToKeep = (
  scrolledPx: number,
  pointPx: number,
  timesLarger: number,
  originPx = 0,
): number => originPx + (scrolledPx + pointPx - originPx) * timesLarger - pointPx
