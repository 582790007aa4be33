import { useRef, useState } from 'preact/hooks'
import type { UnitSystem } from '../../shared/quantities/shown-units.ts'
import type { Say } from '../../shared/text/language.ts'
import { type DepthHandle, depthAfterKey, depthText, snappedDepthM } from './depth-handles.ts'
import { handleName, handleValue } from './profile-words.ts'

type Props = {
  readonly handle: DepthHandle
  /** Its middle on the drawing. */
  readonly xPx: number
  readonly yPx: number
  /** How wide it may be without covering its neighbour. */
  readonly widthPx: number
  readonly pxPerMDown: number
  readonly say: Say
  /** The drawing is of a former entry: nothing to take hold of. */
  readonly isResting: boolean
  readonly onWrite: (depth: string) => void
  readonly onHold: (isHeld: boolean) => void
  readonly onTakeBack: () => void
}

type Held = {
  readonly clientY: number
  readonly givenM: number
  readonly pxPerMDown: number
  /** A tap alone leaves the depth as it was typed. */
  readonly hasMoved: boolean
}
/** What a resting finger moves by itself. */
const STILL_PX = 3

/** A round grip with arrows up and down. */
const Grip = () => (
  <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
    <circle class="grip-disc" cx="12" cy="12" r="10" />
    <path class="grip-arrows" d="M8 10.25 12 6l4 4.25zM8 13.75 12 18l4-4.25z" />
  </svg>
)

/** What hand and keys do to a depth. */
function useDepthHold({ handle, pxPerMDown, say, isResting, onWrite, onHold, onTakeBack }: Props) {
  // Measured from where it was taken: the drawing may grow under the hand.
  const held = useRef<Held | null>(null)
  // A key may come before the plan of the one before: it goes on from what was written.
  const writtenM = useRef<number | null>(null)
  const [isSpeaking, setSpeaking] = useState(false)
  const end = () => {
    held.current = null
    writtenM.current = null
    setSpeaking(false)
  }
  const letGo = () => {
    end()
    onHold(false)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape') {
      end()
      return onTakeBack()
    }
    if (isResting || event.ctrlKey || event.altKey || event.metaKey) return
    const at = { ...handle, givenM: writtenM.current ?? handle.givenM }
    const depthM = depthAfterKey(event.key, at, say.system)
    if (depthM === null) return
    event.preventDefault()
    writtenM.current = depthM
    setSpeaking(true)
    onWrite(depthText(depthM, say.system))
  }
  const onPointerDown = (event: PointerEvent & { readonly currentTarget: HTMLElement }) => {
    if (isResting || event.button !== 0 || !event.isPrimary) return
    event.preventDefault()
    event.currentTarget.focus({ preventScroll: true })
    event.currentTarget.setPointerCapture(event.pointerId)
    held.current = { clientY: event.clientY, givenM: handle.givenM, pxPerMDown, hasMoved: false }
    writtenM.current = null
    setSpeaking(true)
    onHold(true)
  }
  const onPointerMove = ({ clientY }: PointerEvent) => {
    const from = held.current
    if (from === null || (!from.hasMoved && Math.abs(clientY - from.clientY) < STILL_PX)) return
    held.current = { ...from, hasMoved: true }
    onWrite(draggedTo(from, clientY, handle, say.system))
  }
  return {
    isSpeaking,
    doors: { onKeyDown, onPointerDown, onPointerMove, onLostPointerCapture: letGo, onBlur: letGo },
  }
}

/** A depth of the bore as a slider: by hand, by touch and by key. */
export function DepthSlider(props: Props) {
  const { handle, xPx, yPx, widthPx, say, isResting } = props
  const { isSpeaking, doors } = useDepthHold(props)
  const value = handleValue(handle, depthText(handle.givenM, say.system), say)
  return (
    <div
      class={`depth-slider depth-${handle.end}${isResting ? ' resting' : ''}`}
      role="slider"
      tabIndex={0}
      aria-label={handleName(handle, say)}
      aria-orientation="vertical"
      aria-valuemin={rounded(handle.shallowestM)}
      aria-valuemax={rounded(handle.deepestM)}
      aria-valuenow={rounded(handle.givenM)}
      aria-valuetext={value}
      aria-disabled={isResting}
      style={{ left: `${xPx - widthPx / 2}px`, top: `${yPx}px`, width: `${widthPx}px` }}
      {...doors}
    >
      <Grip />
      {isSpeaking && (
        <span class="depth-said" aria-hidden="true">
          {value}
        </span>
      )}
    </div>
  )
}

function draggedTo(held: Held, clientY: number, handle: DepthHandle, system: UnitSystem): string {
  const wantedM = held.givenM + (clientY - held.clientY) / held.pxPerMDown
  return depthText(snappedDepthM(wantedM, handle, system), system)
}

/** To the millimetre: what a slider is at, for programs that read it. */
const rounded = (m: number): number => Math.round(m * 1000) / 1000
