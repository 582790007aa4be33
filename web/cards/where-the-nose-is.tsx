import { useState } from 'preact/hooks'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'
import { formatQuantity } from '../../shared/quantities/format-quantity.ts'
import { parseQuantity } from '../../shared/quantities/parse-quantity.ts'
import { waitsForGeodesics } from '../state/geodesics-on-demand.ts'
import type { JsonObject } from '../state/json.ts'
import { units } from '../state/unit-choice.ts'
import { cardPage } from '../words/card-words.ts'
import { noseByMark, noseOf } from './nose.ts'

const lengthOf = (text: string): number | null => {
  const parsed = parseQuantity(text, 'length', {})
  return parsed.ok ? parsed.valueSi : null
}

type FieldProps = {
  readonly id: string
  readonly label: string
  readonly text: string
  readonly onType: (text: string) => void
}

const LengthField = ({ id, label, text, onType }: FieldProps) => (
  <div class="field">
    <label for={id}>{label}</label>
    <input
      id={id}
      type="text"
      autocomplete="off"
      placeholder={units.value === 'us' ? '12 ft 6 in' : '3.8 m'}
      value={text}
      onInput={(event) => onType(event.currentTarget.value)}
    />
  </div>
)

/** A hose mark into a place: nose by rule; taped from the tail, tool and coupling come on top. */
export function WhereTheNoseIs({ crossing }: { readonly crossing: JsonObject | null }) {
  const W = cardPage()
  const [mark, setMark] = useState('')
  const [tool, setTool] = useState('')
  const [isFromTail, setFromTail] = useState(true)
  const parsed = crossing === null ? null : parseCrossing(crossing)
  const plan = parsed?.ok && !waitsForGeodesics(parsed.value) ? planCrossing(parsed.value) : null
  const toolM = lengthOf(tool) ?? (parsed?.ok ? parsed.value.tool.lengthM : null)
  const markM = lengthOf(mark)
  const shown = (value: number) => formatQuantity(value, 'length', units.value)
  const noseM =
    markM === null || (isFromTail && toolM === null) ? null : markM + (isFromTail ? (toolM ?? 0) : 0)
  const nose = noseM === null ? null : plan?.ok ? noseOf(plan.value, noseM) : noseByMark(noseM)
  return (
    <section class="card-nose" aria-labelledby="nose-heading">
      <h2 id="nose-heading">{W.nose}</h2>
      <div class="fields">
        <LengthField id="nose-mark" label={W.mark} text={mark} onType={setMark} />
        <div class="field">
          <label for="nose-zero">{W.zero}</label>
          <select
            id="nose-zero"
            value={isFromTail ? 'tail' : 'nose'}
            onChange={(event) => setFromTail(event.currentTarget.value === 'tail')}
          >
            <option value="tail">{W.fromTail}</option>
            <option value="nose">{W.fromNose}</option>
          </select>
        </div>
        {isFromTail && <LengthField id="nose-tool" label={W.tool} text={tool} onType={setTool} />}
      </div>
      <div role="status">
        {isFromTail && toolM === null && <p>{W.toolNotKnown}</p>}
        {nose?.state === 'beyond' && <p>{W.noseBeyond}</p>}
        {nose?.state === 'found' && (
          <>
            <p class="card-answer">
              {W.noseAt(shown(nose.stationM))} {nose.leftM !== null && W.noseLeft(shown(nose.leftM))}
            </p>
            <p>{nose.depthM === null ? W.noPlan : W.noseDepth(shown(nose.depthM))}</p>
            <p>{W.noseCircle(shown(nose.reachM))}</p>
          </>
        )}
      </div>
    </section>
  )
}
