import { useMemo, useState } from 'preact/hooks'
import { type JudgedPart, judgeInspection } from '../../shared/core/shop/judge-inspection.ts'
import { INSPECTION_STEPS, PART_GROUPS } from '../../shared/core/shop/template.ts'
import { smallPhoto } from '../site/photo.ts'
import { units } from '../state/unit-choice.ts'
import { InspectionAsks } from './inspection-asks.tsx'
import {
  type Draft,
  documentOf,
  emptyDraft,
  forgetDraft,
  keepDraft,
  questionsOf,
  readingsOf,
  recalledDraft,
} from './inspection-draft.ts'
import { PartFields } from './part-fields.tsx'
import type { ShopTool, ShopView } from './shop-facts.ts'
import { type Saved, saveSheet } from './shop-store.ts'
import { SHOP } from './shop-words.ts'

type Props = { readonly tool: ShopTool; readonly view: ShopView }
type Change = (to: Partial<Draft>) => void
type Photo = { readonly item: string; readonly data: string }

/** The unit the labels name: what is typed bare is read in it. */
const benchUnit = (): 'in' | 'mm' => (units.value === 'us' ? 'in' : 'mm')

const swapped = (list: readonly string[], word: string, isIn: boolean): readonly string[] =>
  isIn ? [...list.filter((each) => each !== word), word] : list.filter((each) => each !== word)

function Tilt({
  id,
  words,
  value,
  onChange,
}: {
  readonly id: string
  readonly words: string
  readonly value: string
  readonly onChange: (value: string) => void
}) {
  const F = SHOP.form
  return (
    <fieldset class="tilt">
      <legend>{words}</legend>
      <p class="hint">{F.tiltWhat}</p>
      <div class="big-choices">
        {(['passed', 'failed', ''] as const).map((each) => (
          <label key={each}>
            <input type="radio" name={id} checked={value === each} onChange={() => onChange(each)} />
            {each === '' ? F.notDone : F[each]}
          </label>
        ))}
      </div>
    </fieldset>
  )
}

function Head({ draft, change }: { readonly draft: Draft; readonly change: Change }) {
  const F = SHOP.form
  return (
    <div class="fields">
      <div class="field">
        <label for="sheet-on">{F.on}</label>
        <input
          id="sheet-on"
          type="date"
          value={draft.on}
          onInput={(event) => change({ on: event.currentTarget.value })}
        />
      </div>
      <div class="field">
        <label for="sheet-by">{F.by}</label>
        <input
          id="sheet-by"
          type="text"
          autocomplete="name"
          maxLength={120}
          value={draft.by}
          onInput={(event) => change({ by: event.currentTarget.value })}
        />
      </div>
    </div>
  )
}

/** Plain steps are ticked; the two tilt tests have an outcome, and measuring has the fields below. */
const TICKED = INSPECTION_STEPS.filter(
  (step) => !step.startsWith('tilt') && step !== 'measure' && step !== 'judge',
)

function Steps({ draft, change }: { readonly draft: Draft; readonly change: Change }) {
  return (
    <ul class="big-ticks">
      {TICKED.map((step) => (
        <li key={step}>
          <label>
            <input
              type="checkbox"
              checked={draft.steps.includes(step)}
              onChange={(event) => {
                const isIn = event.currentTarget.checked
                change({
                  steps: swapped(draft.steps, step, isIn),
                  ...(step === 'strip' ? { stripped: isIn } : {}),
                })
              }}
            />
            {SHOP.steps[step]}
          </label>
        </li>
      ))}
    </ul>
  )
}

function PhotoField({ photos, onTaken }: { photos: readonly Photo[]; onTaken: (photo: Photo) => void }) {
  const F = SHOP.form
  return (
    <div class="field">
      <label for="sheet-photo">{F.photo}</label>
      <input
        id="sheet-photo"
        type="file"
        accept="image/*"
        capture="environment"
        onChange={async (event) => {
          const [file] = event.currentTarget.files ?? []
          const data = file === undefined ? null : await smallPhoto(file)
          if (data !== null) onTaken({ item: `inspection-${photos.length + 1}`, data })
        }}
      />
      <p class="hint" role="status">
        {photos.length > 0 && F.photoTaken(photos.length)}
      </p>
    </div>
  )
}

type GroupsProps = Props & {
  readonly draft: Draft
  readonly judged: readonly JudgedPart[]
  readonly change: Change
}

/** Parts by where they sit, each with what is looked at. */
function Groups({ tool, view, draft, judged, change }: GroupsProps) {
  return (
    <>
      {PART_GROUPS.map((group) => {
        const parts = tool.template.parts.filter((part) => part.group === group)
        if (parts.length === 0) return null
        return (
          <section key={group} class="panel" aria-labelledby={`group-${group}`}>
            <h2 id={`group-${group}`}>{SHOP.groups[group]}</h2>
            {parts.map((part) => (
              <PartFields
                key={part.key}
                tool={tool}
                view={view}
                part={part}
                draft={draft}
                unit={benchUnit()}
                judged={judged.find((each) => each.part === part.key) ?? null}
                onValue={(place, text) => change({ values: { ...draft.values, [place]: text } })}
                onReplaced={(isIn) => change({ replaced: swapped(draft.replaced, part.key, isIn) })}
              />
            ))}
          </section>
        )
      })}
    </>
  )
}

/** One sheet in the order of the work; nothing typed is lost, with signal or without. */
export function InspectionForm({ tool, view }: Props) {
  const F = SHOP.form
  const { today } = view.factsOf(tool.entry.id)
  const [draft, setDraft] = useState(() => recalledDraft(tool.entry.id, today))
  const [photos, setPhotos] = useState<readonly Photo[]>([])
  const [outcome, setOutcome] = useState<Saved | 'missing' | null>(null)
  const unit = benchUnit()
  const change: Change = (to) => {
    const next = { ...draft, ...to }
    setDraft(next)
    keepDraft(tool.entry.id, next)
    setOutcome(null)
  }
  const judged = useMemo(
    () =>
      judgeInspection(tool.template, { readings: readingsOf(tool, draft, unit), replaced: draft.replaced }),
    [tool, draft, unit],
  )
  const asks = useMemo(() => questionsOf(tool, view, draft, unit), [tool, view, draft, unit])
  const save = async () => {
    if (draft.by.trim() === '' || draft.on === '') return setOutcome('missing')
    const saved = await saveSheet(documentOf(tool, draft, unit), photos)
    setOutcome(saved)
    if (saved !== 'saved' && saved !== 'waiting') return
    forgetDraft(tool.entry.id)
    setDraft(emptyDraft(today))
    setPhotos([])
  }
  const said = {
    saved: F.saved,
    waiting: F.waiting,
    'not-kept': F.notKept,
    refused: F.refused,
    missing: F.missing,
  }
  return (
    <div class="inspection">
      <h1>{F.heading(tool.file.name)}</h1>
      <p>{F.intro}</p>
      <section class="panel">
        <Head draft={draft} change={change} />
        <Tilt
          id="tilt-before"
          words={SHOP.steps['tilt-before']}
          value={draft.tiltBefore}
          onChange={(tiltBefore) => change({ tiltBefore })}
        />
        <Steps draft={draft} change={change} />
      </section>
      <Groups tool={tool} view={view} draft={draft} judged={judged} change={change} />
      <section class="panel">
        <Tilt
          id="tilt-after"
          words={SHOP.steps['tilt-after']}
          value={draft.tiltAfter}
          onChange={(tiltAfter) => change({ tiltAfter })}
        />
        <PhotoField photos={photos} onTaken={(photo) => setPhotos([...photos, photo])} />
        <InspectionAsks tool={tool} asks={asks} draft={draft} change={change} />
        <button type="button" class="save" disabled={asks.length > 0} onClick={() => void save()}>
          {F.save}
        </button>
        <p role="status">{outcome === null ? '' : said[outcome]}</p>
      </section>
    </div>
  )
}
