import type { ComponentChildren } from 'preact'
import { useLayoutEffect, useRef } from 'preact/hooks'
import { FITTED, scrollToKeep, zoomAfterKey } from './zoom.ts'
import { useZoomGestures } from './zoom-gestures.ts'

type Props = {
  readonly label: string
  readonly zoom: number
  readonly onZoom: (zoom: number) => void
  /** Its height when it does not show all of the drawing; null: as high as that. */
  readonly heightPx: number | null
  /** Where the ground is on the drawing, and where the bore: that is what stays in view. */
  readonly groundPx: number
  readonly borePx: number
  readonly children: ComponentChildren
}

type At = { readonly x: number; readonly y: number }

/** What stays at its height when no pointer says: the ground, while the bore is still seen below it; then the bore. */
function keptHeightOf(view: HTMLElement, borePx: number, groundPx: number, times: number): number {
  const ground = groundPx - view.scrollTop
  const boreAfter = ground + (borePx - groundPx) * times
  if (ground >= 0 && boreAfter < view.clientHeight * 0.9) return ground
  return Math.min(Math.max(borePx - view.scrollTop, 0), view.clientHeight)
}

/**
 * A drawing that can be larger than its place: plus, minus and 0, the wheel with ctrl, two fingers. The browser itself
 * moves it, by arrows, wheel and finger.
 */
export function ZoomPane({ label, zoom, onZoom, heightPx, groundPx, borePx, children }: Props) {
  const pane = useRef<HTMLDivElement>(null)
  const drawn = useRef({ zoom, borePx })
  const keptPoint = useRef<At | null>(null)

  useLayoutEffect(() => {
    const view = pane.current
    const before = drawn.current
    drawn.current = { zoom, borePx }
    if (view === null || before.zoom === zoom) return
    const times = zoom / before.zoom
    const y = keptHeightOf(view, before.borePx, groundPx, times)
    const point = keptPoint.current ?? { x: view.clientWidth / 2, y }
    keptPoint.current = null
    view.scrollTo({
      left: scrollToKeep(view.scrollLeft, point.x, times),
      top: scrollToKeep(view.scrollTop, point.y, times, groundPx),
      behavior: 'instant',
    })
  }, [zoom, groundPx, borePx])

  useZoomGestures(pane, zoom, (next, clientX, clientY) => {
    const box = pane.current?.getBoundingClientRect()
    if (box) keptPoint.current = { x: clientX - box.left, y: clientY - box.top }
    onZoom(next)
  })

  return (
    <section
      ref={pane}
      class={`profile-pane${heightPx === null ? '' : ' cut'}${zoom === FITTED ? '' : ' zoomed'}`}
      aria-label={label}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
      tabIndex={0}
      style={{ '--pane-height': `${heightPx ?? 0}px` }}
      onKeyDown={(event) => {
        if (event.ctrlKey || event.metaKey || event.altKey) return
        const next = zoomAfterKey(event.key, zoom)
        if (next === null) return
        event.preventDefault()
        onZoom(next)
      }}
    >
      {children}
    </section>
  )
}
