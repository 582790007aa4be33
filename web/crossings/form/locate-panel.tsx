import { jurisdictionOf } from '../../../shared/core/digsafe/jurisdiction-of.ts'
import { JURISDICTION_NAMES } from '../../../shared/tables/jurisdiction-ids.ts'
import { ChoiceField, type Option } from '../../fields/choice-field.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import { YesNoField } from '../../fields/yes-no-field.tsx'
import { LatePlaceRules } from '../../locate/late-place-rules.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { type Path, textAt, valueAt } from '../../state/document-path.ts'
import { FORM } from '../../words/form-words.ts'
import { foundOnGround, ownerAnswers } from '../../words/line-option-words.ts'
import { SITE_FORM } from '../../words/site-form-words.ts'
import { Folded, FoldedPanel } from './panel.tsx'

const W = SITE_FORM.locate
const P = FORM.places
const OTHER_PLACE = 'other'
type Props = { readonly model: CrossingModel }

/** A place without rules here is the printed ticket's alone, once somebody has put a name to having read its rules. */
function PlaceFields({ model }: Props) {
  const place = textAt(model.document.value, 'locate.jurisdiction')
  const code = jurisdictionOf(place)
  const isWritten = place === '' || code === place || place === OTHER_PLACE
  const options: readonly Option[] = [
    ...(isWritten
      ? []
      : [[place, `${place}${code === null ? '' : `: ${JURISDICTION_NAMES[code]}`}`] as const]),
    ...Object.entries(JURISDICTION_NAMES),
    [OTHER_PLACE, W.otherPlace],
  ]
  return (
    <>
      <ChoiceField
        model={model}
        path="locate.jurisdiction"
        label={W.jurisdiction}
        options={options}
        unsaid={FORM.unsaid}
      />
      {place !== '' && code === null && (
        <>
          <TextField model={model} path="locate.rulesRead.by" label={P.rulesReadBy} isRequired />
          <TextField
            model={model}
            path="locate.rulesRead.on"
            label={P.rulesReadOn}
            type="datetime-local"
            isRequired
          />
        </>
      )}
    </>
  )
}

const TicketFields = ({ model }: Props) => (
  <fieldset class="row">
    <legend>{W.ticket}</legend>
    <p class="fine">{W.ticketWhy}</p>
    <div class="fields">
      <TextField model={model} path="locate.ticket.starts" label={W.starts} type="datetime-local" />
      <TextField model={model} path="locate.ticket.expires" label={W.expires} type="datetime-local" />
      <TextField model={model} path="locate.ticket.renewBy" label={W.renewBy} type="datetime-local" />
      <TextField model={model} path="locate.ticket.number" label={W.number} />
      <TextField model={model} path="locate.ticket.site" label={W.site} />
    </div>
  </fieldset>
)

const OwnerFields = ({ model, path }: Props & { readonly path: Path }) => (
  <>
    <TextField model={model} path={`${path}.owner`} label={W.owner} isRequired />
    <ChoiceField
      model={model}
      path={`${path}.answer`}
      label={W.answer}
      options={ownerAnswers()}
      unsaid={W.noAnswer}
    />
    <Folded words={W.moreAnswer}>
      <TextField model={model} path={`${path}.on`} label={W.answeredOn} type="datetime-local" />
      <ChoiceField
        model={model}
        path={`${path}.found`}
        label={W.found}
        options={foundOnGround()}
        unsaid={FORM.unsaid}
      />
      <TextField model={model} path={`${path}.photo`} label={W.photo} />
      <TextField model={model} path={`${path}.phone`} label={W.phone} />
    </Folded>
  </>
)

export function LocatePanel({ model }: Props) {
  const isEntered = valueAt(model.document.value, 'locate') !== undefined
  return (
    <FoldedPanel id="locate" heading={P.locate} inBrief={isEntered ? W.entered : W.none}>
      <div class="fields">
        <PlaceFields model={model} />
        <TextField model={model} path="locate.called" label={W.called} type="datetime-local" />
        <YesNoField model={model} path="locate.meeting" label={W.meeting} />
      </div>
      <LatePlaceRules model={model} />
      <TicketFields model={model} />
      <ListField
        model={model}
        path="locate.responses"
        noun={P.response}
        addWords={W.add}
        fresh={{}}
        row={(path) => <OwnerFields model={model} path={path} />}
      />
    </FoldedPanel>
  )
}
