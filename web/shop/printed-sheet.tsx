import { USUAL_LENGTH_TOLERANCE_M } from '../../shared/core/shop/judge-measure.ts'
import {
  GRADED_MEASURES,
  INSPECTION_STEPS,
  isSized,
  type MeasureSpec,
} from '../../shared/core/shop/template.ts'
import { formatQuantity } from '../../shared/quantities/format-quantity.ts'
import { shown } from '../fields/shown.ts'
import { units } from '../state/unit-choice.ts'
import type { ShopTool, ShopView } from './shop-facts.ts'
import { gradeName, measureName, partName } from './shop-said.ts'
import { SHOP } from './shop-words.ts'

/** From here on a size is read with a rule or a calliper, not with a feeler. */
const LARGE_M = 0.02

/** A size of a part, in the fine units of the bench: a feeler tells a thousandth of an inch from the next. */
export function sizeWords(valueM: number | null): string {
  if (valueM === null) return ''
  if (Math.abs(valueM) > LARGE_M) return shown(valueM, 'diameter')
  if (valueM === 0) return units.value === 'us' ? '0 in' : '0 mm'
  return formatQuantity(valueM, 'movement', units.value, { unit: units.value === 'us' ? 'in' : 'mm' })
}

/** The limit as a sheet prints it; a length may be out either way. */
export function limitWords(spec: MeasureSpec): string {
  if (spec.measure === 'length') return `± ${sizeWords(spec.limitM ?? USUAL_LENGTH_TOLERANCE_M)}`
  if (spec.limitM === null) return spec.measure === 'stands-out' ? sizeWords(0) : ''
  return sizeWords(spec.limitM)
}

const Row = ({ name, spec }: { readonly name: string; readonly spec: MeasureSpec }) => (
  <tr>
    <th scope="row">
      {name}: {measureName(spec.measure)}
    </th>
    <td>{sizeWords(spec.nominalM)}</td>
    <td>{isSized(spec.measure) ? limitWords(spec) : ''}</td>
    <td class="sheet-space">
      {isSized(spec.measure) ? '' : GRADED_MEASURES[spec.measure].map(gradeName).join(' / ')}
    </td>
    <td class="sheet-space">K / W / R</td>
  </tr>
)

/** The same sheet on paper, for a bench without a telephone. */
export function PrintedSheet({ tool }: { readonly tool: ShopTool; readonly view: ShopView }) {
  const W = SHOP.sheet
  return (
    <div class="printed-sheet">
      <h1>{W.heading(tool.file.name)}</h1>
      <button type="button" class="no-print" onClick={() => window.print()}>
        {W.print}
      </button>
      <p>{SHOP.form.intro}</p>
      <p class="sheet-lines">
        {W.day}: ____________ {W.by}: ________________________
      </p>
      <ol class="sheet-steps">
        {INSPECTION_STEPS.map((step) => (
          <li key={step}>
            ☐ {SHOP.steps[step]}
            {step.startsWith('tilt') && ` (${SHOP.form.passed} / ${SHOP.form.failed})`}
          </li>
        ))}
      </ol>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable without a mouse */}
      <section class="fleet-board" tabIndex={0} aria-label={W.heading(tool.file.name)}>
        <table>
          <thead>
            <tr>
              <th scope="col">{SHOP.wear.part}</th>
              <th scope="col">{W.new}</th>
              <th scope="col">{W.limit}</th>
              <th scope="col">{W.found}</th>
              <th scope="col">{W.verdict}</th>
            </tr>
          </thead>
          <tbody>
            {tool.template.parts.flatMap((part) =>
              part.measures.map((spec) => (
                <Row
                  key={`${part.key} ${spec.key}`}
                  name={part.torque === null ? partName(part) : `${partName(part)} (${part.torque})`}
                  spec={spec}
                />
              )),
            )}
          </tbody>
        </table>
      </section>
    </div>
  )
}
