import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { drawnUtilities } from '../../shared/drawing/drawn-utility.ts'
import { longSection } from '../../shared/drawing/long-section.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { say } from '../state/unit-choice.ts'
import { useBoxWidth } from './box-width.ts'
import { useDepthChange } from './depth-change.ts'
import { DepthSliders } from './depth-sliders.tsx'
import { adoptDrawingRules } from './drawing-rules.ts'
import { keepHeight } from './kept-height.ts'
import { ProfileActions, ProfileTable, ProfileTools } from './profile-tools.tsx'
import { profileWord } from './profile-words.ts'
import { notesOf, sectionFootPx } from './section-alone.ts'
import { SvgDrawing } from './svg-node.tsx'
import { openUtility, UtilityDoors, utilityDoors, utilityTapped } from './utility-doors.tsx'
import { FITTED } from './zoom.ts'
import { ZoomPane } from './zoom-pane.tsx'

adoptDrawingRules()

/** The drawing as it stands, with its size when fitted: the pane keeps that when the drawing is larger. */
function useDrawing(input: CrossingInput, plan: Plan, widthPx: number, scale: Scale) {
  const { lang, system } = say.value
  const { zoom, exaggeration } = scale
  return useMemo(() => {
    if (widthPx === 0) return null
    const fitted = longSection(input, plan, { lang, system, widthPx, exaggeration })
    const heightPx = Number(fitted.tree.attributes.height)
    const section =
      zoom === FITTED
        ? fitted
        : longSection(input, plan, {
            lang,
            system,
            widthPx: Math.round(widthPx * zoom),
            // Zoomed, it stays the drawing it was.
            exaggeration: fitted.exaggeration,
          })
    return {
      section,
      fittedHeightPx: heightPx,
      sectionPx: sectionFootPx(fitted.tree),
      utilities: drawnUtilities(input, plan),
    }
  }, [input, plan, lang, system, widthPx, zoom, exaggeration])
}

type Scale = { readonly zoom: number; readonly exaggeration: number | null }
type Props = { readonly model: CrossingModel }
type PlannedProps = Props & {
  readonly input: CrossingInput
  readonly plan: Plan
  readonly isFormer: boolean
}

/** A narrower page shows the section alone at first. */
const NARROW_PX = 640

/** So far down the pane shows the drawing; null: all of it. */
const shownPx = (isFolded: boolean, zoom: number, drawing: NonNullable<ReturnType<typeof useDrawing>>) => {
  if (isFolded) return drawing.sectionPx
  return zoom === FITTED ? null : drawing.fittedHeightPx
}

function Planned({ model, input, plan, isFormer }: PlannedProps) {
  const place = useRef<HTMLElement>(null)
  const box = useRef<HTMLDivElement>(null)
  const widthPx = useBoxWidth(box)
  const [zoom, setZoom] = useState(FITTED)
  const [exaggeration, setExaggeration] = useState<number | null>(null)
  // While a depth is dragged the scale holds still under the hand.
  const [heldScale, setHeldScale] = useState<number | null>(null)
  const [isWhole, setWhole] = useState(false)
  const isNarrow = widthPx < NARROW_PX
  const isFolded = isNarrow && !isWhole
  const change = useDepthChange(model)
  const drawing = useDrawing(input, plan, widthPx, { zoom, exaggeration: exaggeration ?? heldScale })
  const words = say.value
  useEffect(() => keepHeight(place.current?.offsetHeight ?? 0), [drawing])
  const doors = drawing === null ? [] : utilityDoors(drawing.utilities, drawing.section, words)
  const openTapped = (event: MouseEvent & { readonly currentTarget: Element }) => {
    if (!(event.target instanceof Element)) return
    const { left, top } = event.currentTarget.getBoundingClientRect()
    const at = { x: event.clientX - left, y: event.clientY - top }
    const index = utilityTapped(event.target, at, doors)
    if (index !== null) openUtility(index)
  }
  const actions = (
    <ProfileActions
      model={model}
      input={input}
      plan={plan}
      exaggeration={exaggeration}
      onExaggeration={setExaggeration}
      say={words}
    />
  )
  return (
    <section ref={place} class="panel profile" aria-label={profileWord('heading', words)}>
      <div ref={box} class={isFormer ? 'profile-box former' : 'profile-box'}>
        {drawing !== null && (
          <ZoomPane
            label={profileWord('pane', words)}
            zoom={zoom}
            onZoom={setZoom}
            heightPx={shownPx(isFolded, zoom, drawing)}
          >
            <div class="profile-sheet">
              {/* biome-ignore lint/a11y/useKeyWithClickEvents: keys have buttons of their own, below */}
              {/* biome-ignore lint/a11y/noStaticElementInteractions: the same */}
              <div class="profile-drawing" onClick={openTapped}>
                <SvgDrawing tree={drawing.section.tree} />
              </div>
              <DepthSliders
                section={drawing.section}
                input={input}
                radiusM={plan.bore.diameterM / 2}
                change={change}
                say={words}
                isFormer={isFormer}
                onHold={(isHeld) => setHeldScale(isHeld ? drawing.section.exaggeration : null)}
              />
              <UtilityDoors doors={doors} say={words} />
            </div>
          </ZoomPane>
        )}
        {isFormer && (
          <p class="profile-former" role="status">
            {profileWord('former', words)}
          </p>
        )}
      </div>
      {drawing !== null && (
        <>
          {isFolded && <p class="profile-notes">{notesOf(drawing.section.tree)}</p>}
          <div class="profile-row">
            <ProfileTools
              zoom={zoom}
              onZoom={setZoom}
              scaleNote={drawing.section.scaleNote}
              change={change}
              say={words}
              whole={isNarrow ? { isWhole, onWhole: setWhole } : null}
            />
            {!isNarrow && actions}
          </div>
          <p class="fine profile-hint">{profileWord('hint', words)}</p>
          <ProfileTable table={drawing.section.table} say={words} />
          {isNarrow && (
            <details class="folded">
              <summary>{profileWord('more', words)}</summary>
              {actions}
            </details>
          )}
        </>
      )}
    </section>
  )
}

/** The crossing in section, straight under its verdict. */
export function Profile({ model }: Props) {
  const answers = model.answers.value
  if (answers.state === 'none') return null
  const { plan, input } = answers
  return <Planned model={model} input={input} plan={plan} isFormer={answers.state === 'former'} />
}
