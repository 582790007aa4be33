import { useRef, useState } from 'preact/hooks'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { drawingStyle } from '../../shared/drawing/drawing-style.ts'
import { longSection } from '../../shared/drawing/long-section.ts'
import type { SectionTable } from '../../shared/drawing/long-section-table.ts'
import type { Sheet } from '../../shared/drawing/section-scale.ts'
import { standaloneSvg } from '../../shared/drawing/svg-text.ts'
import type { Say } from '../../shared/text/language.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { fileNameOf, saveFile } from '../state/crossing-file.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import type { useDepthChange } from './depth-change.ts'
import { profileWord } from './profile-words.ts'
import { openSheetView } from './sheet-view.tsx'
import { FITTED, MOST_ZOOM, zoomedIn, zoomedOut } from './zoom.ts'

const EXAGGERATIONS = [1, 2, 5, 10]

type ToolsProps = {
  readonly zoom: number
  readonly onZoom: (zoom: number) => void
  readonly scaleNote: string
  readonly change: ReturnType<typeof useDepthChange>
  readonly say: Say
  /** Whether all of the drawing is shown, or the section alone. */
  readonly whole: { readonly isWhole: boolean; readonly onWhole: (isWhole: boolean) => void }
}

function undoWords({ last }: ToolsProps['change'], say: Say): string {
  if (last === null) return profileWord('undo', say)
  const end =
    last.path === 'depth.launch' ? 'launch' : last.path === 'depth.reception' ? 'reception' : 'middle'
  const number = Number(last.path.split('.')[1]) + 1
  const what = profileWord(end, say, { n: String(number) })
  if (last.former === undefined) return profileWord('undoStraight', say, { what })
  return profileWord('undoTo', say, { what, depth: String(last.former) })
}

/** Zoom and the way back from a drag. */
export function ProfileTools(props: ToolsProps) {
  const { zoom, onZoom, scaleNote, change, say, whole } = props
  const word = (key: Parameters<typeof profileWord>[0]) => profileWord(key, say)
  return (
    <>
      <div class="profile-tools">
        <fieldset class="zoom-buttons">
          <legend class="unseen">{word('tools')}</legend>
          <button
            type="button"
            aria-label={word('zoomOut')}
            disabled={zoom === FITTED}
            onClick={() => onZoom(zoomedOut(zoom))}
          >
            −
          </button>
          <button type="button" disabled={zoom === FITTED} onClick={() => onZoom(FITTED)}>
            {word('fit')}
          </button>
          <button
            type="button"
            aria-label={word('zoomIn')}
            disabled={zoom === MOST_ZOOM}
            onClick={() => onZoom(zoomedIn(zoom))}
          >
            +
          </button>
        </fieldset>
        <button
          type="button"
          aria-label={undoWords(change, say)}
          title={undoWords(change, say)}
          disabled={change.last === null}
          onClick={change.undo}
        >
          {word('undoShort')}
        </button>
        <button type="button" aria-expanded={whole.isWhole} onClick={() => whole.onWhole(!whole.isWhole)}>
          {word(whole.isWhole ? 'sectionOnly' : 'whole')}
        </button>
      </div>
      <p class="unseen" role="status">
        {scaleNote}
      </p>
    </>
  )
}

type ActionsProps = {
  readonly model: CrossingModel
  readonly input: CrossingInput
  readonly plan: Plan
  /** null: chosen by the drawing. */
  readonly exaggeration: number | null
  readonly onExaggeration: (times: number | null) => void
  readonly say: Say
}

/** A drawing kept by itself is as wide as a desk. */
const FILE_WIDTH_PX = 1200

type ScaleProps = Pick<ActionsProps, 'exaggeration' | 'onExaggeration' | 'say'>

function ScaleChoice({ exaggeration, onExaggeration, say }: ScaleProps) {
  return (
    <label class="profile-choice">
      <span>{profileWord('exaggeration', say)}</span>
      <select
        value={exaggeration === null ? '' : String(exaggeration)}
        onChange={({ currentTarget: { value } }) => onExaggeration(value === '' ? null : Number(value))}
      >
        <option value="">{profileWord('auto', say)}</option>
        {EXAGGERATIONS.map((times) => (
          <option key={times} value={String(times)}>
            {times === 1 ? profileWord('sameScale', say) : profileWord('times', say, { n: String(times) })}
          </option>
        ))}
      </select>
    </label>
  )
}

/** The depth scale, the drawing as a file and on paper. */
export function ProfileActions({ model, input, plan, exaggeration, onExaggeration, say }: ActionsProps) {
  const [sheet, setSheet] = useState<Sheet | null>(null)
  const printButton = useRef<HTMLButtonElement>(null)
  const usual: Sheet = say.system === 'us' ? 'letter' : 'a4'
  const saveDrawing = () => {
    const { tree } = longSection(input, plan, { ...say, widthPx: FILE_WIDTH_PX, exaggeration, heading: true })
    const text = standaloneSvg(tree, drawingStyle('file'))
    saveFile(fileNameOf(model.document.value, 'svg'), text, 'image/svg+xml')
  }
  return (
    <div class="profile-actions">
      <ScaleChoice exaggeration={exaggeration} onExaggeration={onExaggeration} say={say} />
      <button type="button" class="quiet" onClick={saveDrawing}>
        {profileWord('save', say)}
      </button>
      <label class="profile-choice">
        <span>{profileWord('paper', say)}</span>
        <select
          value={sheet ?? usual}
          onChange={({ currentTarget }) => setSheet(currentTarget.value === 'a4' ? 'a4' : 'letter')}
        >
          <option value="letter">{profileWord('letter', say)}</option>
          <option value="a4">{profileWord('a4', say)}</option>
        </select>
      </label>
      <button type="button" class="quiet" onClick={() => window.print()}>
        {profileWord('jobSheet', say)}
      </button>
      <button
        type="button"
        class="quiet"
        ref={printButton}
        onClick={() =>
          openSheetView({ input, plan, sheet: sheet ?? usual, exaggeration, say }, printButton.current)
        }
      >
        {profileWord('print', say)}
      </button>
    </div>
  )
}

/** The same figures for those who do not see the drawing, and for those who would rather read. */
export function ProfileTable({ table, say }: { readonly table: SectionTable; readonly say: Say }) {
  const columns = ['what', 'station', 'depthToTop', 'depthToCenter', 'depthToBottom', 'note'] as const
  return (
    <details class="folded">
      <summary>{profileWord('table', say)}</summary>
      <DataTable
        caption={table.caption}
        columns={columns.map((column) => table.head[column])}
        rows={table.rows.map((row, place) => ({
          key: `${place} ${row.what}`,
          cells: columns.map((column) => row[column]),
        }))}
      />
    </details>
  )
}
