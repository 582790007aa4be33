import type { JudgedMeasure, JudgedPart } from '../../shared/core/shop/judge-inspection.ts'
import {
  GRADED_MEASURES,
  isSized,
  type MeasureSpec,
  type PartSpec,
  type Verdict,
} from '../../shared/core/shop/template.ts'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import { type Draft, lastReading, placeOf, sizeOf } from './inspection-draft.ts'
import { limitWords, sizeWords } from './printed-sheet.tsx'
import type { ShopTool, ShopView } from './shop-facts.ts'
import { gradeName, measureName, partName } from './shop-said.ts'
import { SHOP } from './shop-words.ts'

const SHAPES = { keep: 'good', watch: 'look', replace: 'stop' } as const

/** Keep, watch or replace, by shape and word. */
const VerdictWord = ({ verdict }: { readonly verdict: Verdict }) => (
  <strong class="tool-word">
    <StatusMark shape={SHAPES[verdict]} /> {SHOP.verdicts[verdict]}
  </strong>
)

type FieldProps = {
  readonly id: string
  readonly spec: MeasureSpec
  readonly value: string
  readonly unit: 'in' | 'mm'
  readonly last: number | null
  readonly judged: JudgedMeasure | null
  readonly onValue: (text: string) => void
}

function hintOf(spec: MeasureSpec, last: number | null): string {
  const F = SHOP.form
  const limit = isSized(spec.measure) ? limitWords(spec) : ''
  return [
    SHOP.lookFor[spec.measure],
    ...(spec.nominalM === null ? [] : [F.nominal(sizeWords(spec.nominalM))]),
    ...(limit === '' ? [] : [F.limit(limit)]),
    ...(last === null ? [] : [F.last(sizeWords(last))]),
  ].join(' · ')
}

function SizedField({ id, spec, value, unit, last, judged, onValue }: FieldProps) {
  const isNoSize = value.trim() !== '' && sizeOf(value, unit) === null
  return (
    <div class={isNoSize ? 'field refused' : 'field'}>
      <label for={id}>
        {measureName(spec.measure)} ({unit})
      </label>
      <input
        id={id}
        type="text"
        inputMode="text"
        autocomplete="off"
        value={value}
        aria-describedby={`${id}-hint`}
        aria-invalid={isNoSize}
        onInput={(event) => onValue(event.currentTarget.value)}
      />
      <p id={`${id}-hint`} class="hint">
        {isNoSize ? SHOP.form.notRead : hintOf(spec, last)}
      </p>
      <p class="measure-verdict" aria-live="polite">
        {judged !== null && judged.why !== 'not-read' && (
          <>
            {judged.verdict !== null && <VerdictWord verdict={judged.verdict} />} {SHOP.why[judged.why]}
          </>
        )}
      </p>
    </div>
  )
}

function GradedField({ id, spec, value, judged, onValue }: FieldProps) {
  if (isSized(spec.measure)) return null
  return (
    <fieldset class="graded">
      <legend>{measureName(spec.measure)}</legend>
      <p class="hint">{SHOP.lookFor[spec.measure]}</p>
      <div class="big-choices">
        {GRADED_MEASURES[spec.measure].map((grade) => (
          <label key={grade}>
            <input type="radio" name={id} checked={value === grade} onChange={() => onValue(grade)} />
            {gradeName(grade)}
          </label>
        ))}
      </div>
      <p class="measure-verdict" aria-live="polite">
        {judged !== null && judged.verdict !== null && <VerdictWord verdict={judged.verdict} />}
      </p>
    </fieldset>
  )
}

type Props = {
  readonly tool: ShopTool
  readonly view: ShopView
  readonly part: PartSpec
  readonly draft: Draft
  readonly unit: 'in' | 'mm'
  readonly judged: JudgedPart | null
  readonly onValue: (place: string, text: string) => void
  readonly onReplaced: (isIn: boolean) => void
}

/** All that is looked at on one part, and whether a new one went in. */
export function PartFields({ tool, view, part, draft, unit, judged, onValue, onReplaced }: Props) {
  return (
    <div class="part-fields">
      <h3>
        {partName(part)} {judged?.verdict != null && <VerdictWord verdict={judged.verdict} />}
      </h3>
      {part.torque !== null && <p class="hint">{SHOP.form.torque(part.torque)}</p>}
      {part.measures.map((spec) => {
        const place = placeOf(part.key, spec)
        const Field = isSized(spec.measure) ? SizedField : GradedField
        return (
          <Field
            key={spec.key}
            id={`sheet-${place.replace('.', '-')}`}
            spec={spec}
            value={draft.values[place] ?? ''}
            unit={unit}
            last={lastReading(tool, view, part.key, spec)}
            judged={judged?.measures.find(({ key }) => key === spec.key) ?? null}
            onValue={(text) => onValue(place, text)}
          />
        )
      })}
      <label class="big-tick">
        <input
          type="checkbox"
          checked={draft.replaced.includes(part.key)}
          onChange={(event) => onReplaced(event.currentTarget.checked)}
        />
        {SHOP.form.replaced}
      </label>
    </div>
  )
}
