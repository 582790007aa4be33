import type { Plan } from '../../shared/core/plan/plan.ts'
import { SOURCES } from '../../shared/sources.ts'
import { cautionSentence } from '../../shared/text/caution-sentences.ts'
import { checklistSentence, checklistWhen } from '../../shared/text/checklist-sentences.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { releaseSentence, statusMeaning, statusWord } from '../../shared/text/release-sentences.ts'
import { say } from '../state/unit-choice.ts'
import { ANSWERS } from '../words/answer-words.ts'
import { FURTHER } from '../words/further-words.ts'
import { SignLine } from './sheet-parts.tsx'
import { sheetWord } from './sheet-words.ts'
import { LAYERS, type Layer, signOffLayer } from './sign-off-layer.ts'

type Props = { readonly plan: Plan }

/** Hold or check, what each reason is, and the way out of it, with a box to tick once it is settled. */
export function SheetRelease({ plan: { release } }: Props) {
  const { status, reasons } = release
  return (
    <section class="sheet-release">
      <h2>{ANSWERS.release.heading}</h2>
      <p>
        <b class={`sheet-status sheet-${status}`}>{statusWord(status, say.value.lang)}</b>{' '}
        {statusMeaning(status, say.value.lang)} {reasons.length > 0 && sheetWord('settled', say.value)}
      </p>
      <ul class="boxes">
        {reasons.map((reason, place) => (
          <li key={`${reason.code} ${place}`}>
            <b>{planWord('reasonKind', reason.kind, say.value)}:</b> {releaseSentence(reason, say.value)}
          </li>
        ))}
      </ul>
      <SignLine words={sheetWord('ready', say.value)} />
    </section>
  )
}

export function SheetCautions({ plan: { cautions } }: Props) {
  return (
    <section>
      <h2>{FURTHER.cautions.heading}</h2>
      <ul class="sheet-cautions">
        {cautions.map((caution) => (
          <li key={caution.id}>
            <b class={`severity-${caution.severity}`}>{planWord('severity', caution.severity, say.value)}:</b>{' '}
            {cautionSentence(caution, say.value)}{' '}
            <span class="cited" lang="en">
              {SOURCES[caution.source].citation}
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}

function LayerList({ plan, layer }: Props & { readonly layer: Layer }) {
  const items = plan.checklist.filter((item) => signOffLayer(item) === layer)
  if (items.length === 0) return null
  return (
    <section class="sheet-layer">
      <h3>{sheetWord(layer, say.value)}</h3>
      <ul class="boxes">
        {items.map((item) => (
          <li key={item.id}>
            {checklistSentence(item, say.value)}{' '}
            {item.when !== 'always' && <span class="cited">({checklistWhen(item, say.value)})</span>}
          </li>
        ))}
      </ul>
      <SignLine words={sheetWord('allTrue', say.value)} />
    </section>
  )
}

/** What is looked at, in the layers it is signed in: a day, a site, this bore. */
export const SheetChecks = ({ plan }: Props) => (
  <section class="sheet-checks">
    <h2>{sheetWord('checks', say.value)}</h2>
    {LAYERS.map((layer) => (
      <LayerList key={layer} plan={plan} layer={layer} />
    ))}
  </section>
)
