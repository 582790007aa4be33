import type { RefObject } from 'preact'
import { useEffect, useRef } from 'preact/hooks'
import { limitedZoom, zoomAfterWheel } from './zoom.ts'

const fingers = (touches: TouchList) => {
  const [a, b] = [touches[0], touches[1]]
  if (a === undefined || b === undefined || touches.length !== 2) return null
  return {
    apartPx: Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY),
    clientX: (a.clientX + b.clientX) / 2,
    clientY: (a.clientY + b.clientY) / 2,
  }
}

type ZoomAt = (zoom: number, clientX: number, clientY: number) => void

/** The wheel with ctrl, and two fingers. Not by attributes: the browser must wait, to leave its own zoom alone. */
export function useZoomGestures(pane: RefObject<HTMLElement>, zoom: number, zoomAt: ZoomAt): void {
  const latest = useRef({ zoom, zoomAt })
  latest.current = { zoom, zoomAt }
  useEffect(() => {
    const view = pane.current
    if (view === null) return
    let pinch: { readonly apartPx: number; readonly zoom: number } | null = null
    const onWheel = (event: WheelEvent) => {
      if (!event.ctrlKey) return
      event.preventDefault()
      latest.current.zoomAt(zoomAfterWheel(event.deltaY, latest.current.zoom), event.clientX, event.clientY)
    }
    const onTouchStart = ({ touches }: TouchEvent) => {
      const two = fingers(touches)
      pinch = two && { apartPx: two.apartPx, zoom: latest.current.zoom }
    }
    const onTouchMove = (event: TouchEvent) => {
      const two = fingers(event.touches)
      if (two === null || pinch === null || pinch.apartPx === 0) return
      event.preventDefault()
      const wanted = limitedZoom((pinch.zoom * two.apartPx) / pinch.apartPx)
      latest.current.zoomAt(wanted, two.clientX, two.clientY)
    }
    const mustWait = { passive: false }
    view.addEventListener('wheel', onWheel, mustWait)
    view.addEventListener('touchstart', onTouchStart)
    view.addEventListener('touchmove', onTouchMove, mustWait)
    return () => {
      view.removeEventListener('wheel', onWheel)
      view.removeEventListener('touchstart', onTouchStart)
      view.removeEventListener('touchmove', onTouchMove)
    }
  }, [pane])
}
