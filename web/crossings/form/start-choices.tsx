import { useEffect, useState } from 'preact/hooks'
import { connection } from '../../offline/connection.ts'
import { crossingsHere, type ListedHere } from '../../offline/crossing-list.ts'
import { keptAgo, OFFLINE } from '../../offline/offline-words.ts'
import { openInDraft } from '../../saved/draft-place.ts'
import { ReplacedNote } from '../../saved/replaced-note.tsx'
import { readCrossingFile, saveCrossingFile } from '../../state/crossing-file.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { FORM } from '../../words/form-words.ts'
import { EMPTY_CROSSING, PRESETS } from '../presets.ts'

const W = FORM.start
type Props = { readonly model: CrossingModel }
type Demos = ListedHere | { readonly state: 'asking' }

function demosHint(demos: Demos): string | null {
  if (demos.state === 'asking') return W.demosWaiting
  if (demos.state === 'failed') return W.demosFailed
  if (demos.state === 'kept') return OFFLINE.demosKept
  return demos.value.length === 0 ? W.demosNone : null
}

function DemoChoice({ model }: Props) {
  const [demos, setDemos] = useState<Demos>({ state: 'asking' })
  const isOnline = connection.value === 'online'
  useEffect(() => {
    let isHere = true
    crossingsHere().then((answer) => {
      if (isHere) setDemos(answer)
    })
    return () => {
      isHere = false
    }
  }, [isOnline])
  const kept = demos.state === 'answered' || demos.state === 'kept' ? demos.value : []
  const hint = demosHint(demos)
  return (
    <div class="field">
      <label for="start-demo">{W.demos}</label>
      <select
        id="start-demo"
        value=""
        disabled={kept.length === 0}
        aria-describedby="start-demo-hint"
        onChange={(event) => {
          const chosen = kept.find(({ id }) => id === event.currentTarget.value)
          if (chosen) openInDraft(model, chosen.document)
        }}
      >
        <option value="">{W.choose}</option>
        {kept.map((each) => (
          <option key={each.id} value={each.id}>
            {each.ageS === null ? each.name : `${each.name}, ${keptAgo(each.ageS)}`}
          </option>
        ))}
      </select>
      <p id="start-demo-hint" class="hint" aria-live="polite">
        {hint}
      </p>
    </div>
  )
}

function FileChoice({ model }: Props) {
  const [isRefused, setRefused] = useState(false)
  const open = async (file: File | undefined) => {
    if (file === undefined) return
    const document = await readCrossingFile(file)
    setRefused(document === null)
    if (document !== null) openInDraft(model, document)
  }
  return (
    <div class="field">
      <label for="start-file">{W.open}</label>
      <input
        id="start-file"
        type="file"
        accept=".json,application/json"
        onChange={(event) => open(event.currentTarget.files?.[0])}
      />
      <p class="issues" aria-live="polite">
        {isRefused && W.notAFile}
      </p>
      <button type="button" class="quiet" onClick={() => saveCrossingFile(model.document.value)}>
        {W.save}
      </button>
    </div>
  )
}

/** Where a crossing can begin: a usual job, an empty form, one that is kept, a file. */
export const StartChoices = ({ model }: Props) => (
  <>
    <fieldset class="presets">
      <legend>{W.presets}</legend>
      {PRESETS.map(({ id, document }) => (
        <button key={id} type="button" onClick={() => openInDraft(model, { ...document, name: W.jobs[id] })}>
          {W.jobs[id]}
        </button>
      ))}
    </fieldset>
    <button type="button" class="quiet" onClick={() => openInDraft(model, EMPTY_CROSSING)}>
      {W.empty}
    </button>
    <ReplacedNote draft={model} />
    <div class="fields">
      <DemoChoice model={model} />
      <FileChoice model={model} />
    </div>
  </>
)
