import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { drawnUtilities } from '../../shared/drawing/drawn-utility.ts'
import { type LongSection, longSection } from '../../shared/drawing/long-section.ts'
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

type Drawing = NonNullable<ReturnType<typeof useDrawing>>
type LayersProps = Omit<PlannedProps, 'model'> & {
  readonly drawing: Drawing
  readonly change: ReturnType<typeof useDepthChange>
  readonly onHold: (isHeld: boolean) => void
}

/** The drawing, and over it what can be taken hold of. */
function Layers({ drawing, input, plan, change, isFormer, onHold }: LayersProps) {
  const words = say.value
  const doors = utilityDoors(drawing.utilities, drawing.section, words)
  const openTapped = (event: MouseEvent & { readonly currentTarget: Element }) => {
    if (!(event.target instanceof Element)) return
    const { left, top } = event.currentTarget.getBoundingClientRect()
    const at = { x: event.clientX - left, y: event.clientY - top }
    const index = utilityTapped(event.target, at, doors)
    if (index !== null) openUtility(index)
  }
  return (
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
        onHold={onHold}
      />
      <UtilityDoors doors={doors} say={words} />
    </div>
  )
}

type BelowProps = Omit<PlannedProps, 'isFormer'> & {
  readonly section: LongSection
  readonly change: ReturnType<typeof useDepthChange>
  readonly look: Scale & {
    readonly onZoom: (zoom: number) => void
    readonly onExaggeration: (times: number | null) => void
  }
  /** null: the page is wide enough for all of it. */
  readonly whole: { readonly isWhole: boolean; readonly onWhole: (isWhole: boolean) => void }
  readonly isNarrow: boolean
}

/** What is done with the drawing, and its table. On a narrow page, what few need is folded. */
function Below({ model, input, plan, section, change, look, whole, isNarrow }: BelowProps) {
  const words = say.value
  const { zoom, onZoom, exaggeration, onExaggeration } = look
  const choices = { exaggeration, onExaggeration, say: words }
  const actions = <ProfileActions model={model} input={input} plan={plan} {...choices} />
  return (
    <>
      {!whole.isWhole && <p class="profile-notes">{notesOf(section.tree)}</p>}
      <div class="profile-row">
        <ProfileTools
          zoom={zoom}
          onZoom={onZoom}
          scaleNote={section.scaleNote}
          change={change}
          say={words}
          whole={whole}
        />
        {!isNarrow && actions}
      </div>
      <p class="fine profile-hint">{profileWord('hint', words)}</p>
      <div class="profile-folds">
        <ProfileTable table={section.table} say={words} />
        {isNarrow && (
          <details class="folded">
            <summary>{profileWord('more', words)}</summary>
            {actions}
          </details>
        )}
      </div>
    </>
  )
}

/** Any page shows the section alone at first, so that the form is in sight; on a narrower one what few need is folded. */
const NARROW_PX = 900

/** The section alone stands in one of these heights: what is below it does not move with every line that comes or goes. */
const BOX_PX = [332, 366, 440, 512]

/** The height of that place; it grows with a crossing, and shrinks only with another one or another width. */
function useBoxHeight(model: CrossingModel, widthPx: number, drawing: Drawing | null): number | null {
  const kept = useRef({ of: '', px: 0 })
  if (drawing === null) return null
  const of = `${model.opened.value} ${widthPx}`
  const { sectionPx } = drawing
  const px = BOX_PX.find((each) => each >= sectionPx) ?? sectionPx
  kept.current = { of, px: kept.current.of === of ? Math.max(kept.current.px, px) : px }
  return kept.current.px
}

/** So far down the pane shows the drawing; null: all of it. */
const shownPx = (isFolded: boolean, zoom: number, drawing: Drawing) => {
  if (isFolded) return drawing.sectionPx
  return zoom === FITTED ? null : drawing.fittedHeightPx
}

/** How far down the middle of the bore is. */
const boreYPx = ({ frame, line }: LongSection): number => frame.y(line.axisLevelM(line.lengthM / 2))

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
  const isFolded = !isWhole
  const change = useDepthChange(model)
  const drawing = useDrawing(input, plan, widthPx, { zoom, exaggeration: exaggeration ?? heldScale })
  const boxPx = useBoxHeight(model, widthPx, drawing)
  const words = say.value
  useEffect(() => keepHeight(place.current?.offsetHeight ?? 0), [drawing])
  return (
    <section ref={place} class="panel profile" aria-label={profileWord('heading', words)}>
      <div
        ref={box}
        class={isFormer ? 'profile-box former' : 'profile-box'}
        style={boxPx === null ? {} : { minHeight: `${boxPx}px` }}
      >
        {isFormer && (
          <p class="profile-former" role="status">
            {profileWord('former', words)}
          </p>
        )}
        {drawing !== null && (
          <ZoomPane
            label={profileWord('pane', words)}
            zoom={zoom}
            onZoom={setZoom}
            heightPx={shownPx(isFolded, zoom, drawing)}
            groundPx={drawing.section.frame.topPx}
            borePx={boreYPx(drawing.section)}
          >
            <Layers
              drawing={drawing}
              input={input}
              plan={plan}
              change={change}
              isFormer={isFormer}
              onHold={(isHeld) => setHeldScale(isHeld ? drawing.section.exaggeration : null)}
            />
          </ZoomPane>
        )}
      </div>
      {drawing !== null && (
        <Below
          model={model}
          input={input}
          plan={plan}
          section={drawing.section}
          change={change}
          look={{ zoom, onZoom: setZoom, exaggeration, onExaggeration: setExaggeration }}
          whole={{ isWhole, onWhole: setWhole }}
          isNarrow={isNarrow}
        />
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
