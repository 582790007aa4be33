import { recall, remember } from '../state/browser-memory.ts'

const KEY = 'underlane.profile-height'

/** As high as the drawing was last, in a window as wide: so that nothing moves when it comes. */
export function keptHeightPx(): number | null {
  const [width, height] = (recall(KEY) ?? '').split(' ').map(Number)
  return width === window.innerWidth && height !== undefined && height > 0 ? height : null
}

export function keepHeight(heightPx: number): void {
  if (heightPx > 0) remember(KEY, `${window.innerWidth} ${Math.ceil(heightPx)}`)
}
