import type { ComponentChildren } from 'preact'
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks'
import { FITTED, limitedZoom, scrollToKeep, zoomAfterKey, zoomAfterWheel } from './zoom.ts'

type Props = {
  readonly label: string
  readonly zoom: number
  readonly onZoom: (zoom: number) => void
  /** Its height when it does not show all of the drawing; null: as high as that. */
  readonly heightPx: number | null
  readonly children: ComponentChildren
}

type At = { readonly x: number; readonly y: number }

const fingers = (touches: TouchList) => {
  const [a, b] = [touches[0], touches[1]]
  if (a === undefined || b === undefined || touches.length !== 2) return null
  return {
    apartPx: Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY),
    clientX: (a.clientX + b.clientX) / 2,
    clientY: (a.clientY + b.clientY) / 2,
  }
}

/**
 * A drawing that can be larger than its place: plus, minus and 0, the wheel with ctrl, two fingers. The browser itself
 * moves it, by arrows, wheel and finger.
 */
export function ZoomPane({ label, zoom, onZoom, heightPx, children }: Props) {
  const pane = useRef<HTMLDivElement>(null)
  const drawnAt = useRef(zoom)
  const keptPoint = useRef<At | null>(null)
  const latest = useRef({ zoom, onZoom })
  latest.current = { zoom, onZoom }

  useLayoutEffect(() => {
    const view = pane.current
    if (view === null || drawnAt.current === zoom) return
    const times = zoom / drawnAt.current
    const point = keptPoint.current ?? { x: view.clientWidth / 2, y: view.clientHeight / 2 }
    view.scrollTo({
      left: scrollToKeep(view.scrollLeft, point.x, times),
      top: scrollToKeep(view.scrollTop, point.y, times),
      behavior: 'instant',
    })
    drawnAt.current = zoom
    keptPoint.current = null
  }, [zoom])

  // Not by attributes: the browser must wait for these, to leave its own zoom alone.
  useEffect(() => {
    const view = pane.current
    if (view === null) return
    let pinch: { readonly apartPx: number; readonly zoom: number } | null = null
    const zoomAt = (next: number, clientX: number, clientY: number) => {
      const box = view.getBoundingClientRect()
      keptPoint.current = { x: clientX - box.left, y: clientY - box.top }
      latest.current.onZoom(next)
    }
    const onWheel = (event: WheelEvent) => {
      if (!event.ctrlKey) return
      event.preventDefault()
      zoomAt(zoomAfterWheel(event.deltaY, latest.current.zoom), event.clientX, event.clientY)
    }
    const onTouchStart = ({ touches }: TouchEvent) => {
      const two = fingers(touches)
      pinch = two && { apartPx: two.apartPx, zoom: latest.current.zoom }
    }
    const onTouchMove = (event: TouchEvent) => {
      const two = fingers(event.touches)
      if (two === null || pinch === null || pinch.apartPx === 0) return
      event.preventDefault()
      zoomAt(limitedZoom((pinch.zoom * two.apartPx) / pinch.apartPx), two.clientX, two.clientY)
    }
    const must = { passive: false }
    view.addEventListener('wheel', onWheel, must)
    view.addEventListener('touchstart', onTouchStart)
    view.addEventListener('touchmove', onTouchMove, must)
    return () => {
      view.removeEventListener('wheel', onWheel)
      view.removeEventListener('touchstart', onTouchStart)
      view.removeEventListener('touchmove', onTouchMove)
    }
  }, [])

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
