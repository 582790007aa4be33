import { render } from 'preact'
import { useEffect, useRef } from 'preact/hooks'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { longSection } from '../../shared/drawing/long-section.ts'
import type { Sheet } from '../../shared/drawing/section-scale.ts'
import type { Say } from '../../shared/text/language.ts'
import { profileWord } from './profile-words.ts'
import { SvgDrawing } from './svg-node.tsx'

type SheetWanted = {
  readonly input: CrossingInput
  readonly plan: Plan
  readonly sheet: Sheet
  readonly exaggeration: number | null
  readonly say: Say
}

function SheetView({ wanted, onClose }: { readonly wanted: SheetWanted; readonly onClose: () => void }) {
  const { input, plan, sheet, exaggeration, say } = wanted
  const first = useRef<HTMLButtonElement>(null)
  useEffect(() => {
    first.current?.focus()
    // Once it stands on the screen.
    const frame = requestAnimationFrame(() => window.print())
    return () => cancelAnimationFrame(frame)
  }, [])
  const { tree } = longSection(input, plan, { ...say, widthPx: 0, sheet, exaggeration, idPrefix: 'sheet' })
  return (
    <main
      class={`sheet-view sheet-${sheet}`}
      aria-label={profileWord('print', say)}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose()
      }}
    >
      <div class="sheet-tools">
        <button type="button" ref={first} onClick={() => window.print()}>
          {profileWord('printNow', say)}
        </button>
        <button type="button" onClick={onClose}>
          {profileWord('back', say)}
        </button>
        <p>{profileWord('printHint', say)}</p>
      </div>
      <div class="sheet-paper">
        <SvgDrawing tree={tree} />
      </div>
    </main>
  )
}

/** The drawing on its sheet, in millimetres, and nothing else, until it is closed again. */
export function openSheetView(wanted: SheetWanted, opener: HTMLElement | null): void {
  const host = document.createElement('div')
  const { scrollX, scrollY } = window
  const root = document.documentElement
  const close = () => {
    render(null, host)
    host.remove()
    delete root.dataset.view
    window.scrollTo({ left: scrollX, top: scrollY, behavior: 'instant' })
    opener?.focus({ preventScroll: true })
  }
  root.dataset.view = 'sheet'
  document.body.append(host)
  render(<SheetView wanted={wanted} onClose={close} />, host)
  window.scrollTo({ left: 0, top: 0, behavior: 'instant' })
}
