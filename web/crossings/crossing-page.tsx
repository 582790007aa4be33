import { useSignalEffect } from '@preact/signals'
import type { ComponentChildren } from 'preact'
import { TextField } from '../fields/text-field.tsx'
import { ProfilePlace } from '../profile/profile-place.tsx'
import { useJobSheet } from '../sheet/job-sheet-place.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { textAt } from '../state/document-path.ts'
import { showCrossing } from '../state/open-crossing.ts'
import { FORM } from '../words/form-words.ts'
import { Answers, Guard } from './answers/answers.tsx'
import { VerdictLine } from './answers/verdict-line.tsx'
import { ExampleNote } from './example-note.tsx'
import { AirPanel, ToolPanel } from './form/air-panel.tsx'
import { LateLowerPanels } from './form/late-lower-panels.tsx'
import { LinePanel } from './form/line-panel.tsx'
import { PipePanel } from './form/pipe-panel.tsx'
import { StartPanel } from './form/start-panel.tsx'

type Props = {
  readonly model: CrossingModel
  /** Says whether what is typed is kept, and keeps it. */
  readonly saving: ComponentChildren
  /** Not saved yet: it may begin as another usual job. */
  readonly isDraft: boolean
  /** What is signed on site, where the crossing is kept. */
  readonly site?: ComponentChildren
}

/** One crossing, one page: what is known beside what follows from it. */
export function CrossingPage({ model, saving, isDraft, site }: Props) {
  useJobSheet(model)
  useSignalEffect(() => showCrossing(model.document.value))
  return (
    <main class="crossing">
      <h1 class="crossing-name">{textAt(model.document.value, 'name') || FORM.unnamed}</h1>
      <Guard model={model}>
        <VerdictLine model={model} />
      </Guard>
      <div class="saving">{saving}</div>
      {isDraft && <ExampleNote model={model} />}
      <div class="crossing-body">
        <Guard model={model}>
          <ProfilePlace model={model} />
        </Guard>
        <CrossingForm model={model} isDraft={isDraft} />
        <Answers model={model} site={site} />
      </div>
    </main>
  )
}

function CrossingForm({ model, isDraft }: Omit<Props, 'saving'>) {
  return (
    <form
      class="crossing-form"
      aria-labelledby="form-heading"
      onSubmit={(event) => event.preventDefault()}
      noValidate
    >
      <h2 id="form-heading" class="column-heading" tabIndex={-1}>
        {FORM.heading}
      </h2>
      {isDraft && <StartPanel model={model} />}
      <section class="panel name-panel" aria-label={FORM.name}>
        <TextField model={model} path="name" label={FORM.name} isRequired />
      </section>
      <LinePanel model={model} />
      <PipePanel model={model} />
      <ToolPanel model={model} />
      <AirPanel model={model} />
      <LateLowerPanels model={model} />
    </form>
  )
}
