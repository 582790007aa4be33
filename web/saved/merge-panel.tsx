import { useState } from 'preact/hooks'
import type { KeptCrossing } from '../../shared/contracts/kept-crossing.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import type { Json } from '../state/json.ts'
import { wordsOfDottedName } from '../words/dotted-name.ts'
import { restoreCrossing } from './crossing-requests.ts'
import { MERGE, SAVE_BAR } from './saved-words.ts'
import type { Saver } from './saver.ts'
import { broughtTogether, type Difference, differencesOf, linesOf, type Side } from './two-versions.ts'
import { whenWords } from './when.ts'

type Props = {
  readonly saver: Saver
  readonly model: CrossingModel
  readonly onSaveAsNew: () => void
  readonly onSaved?: () => void
}
type ConflictProps = Props & { readonly theirs: KeptCrossing }

function Lines({ value, other }: { readonly value: Json | undefined; readonly other: Json | undefined }) {
  const lines = linesOf(value)
  if (lines.length === 0) return <span class="fine">{MERGE.leftOut}</span>
  const others = new Set(linesOf(other))
  return (
    <ul class="value-lines">
      {lines.map((line, place) => (
        // Two shots may read alike: the place tells them apart.
        <li key={`${place} ${line}`}>{others.has(line) ? line : <strong>{line}</strong>}</li>
      ))}
    </ul>
  )
}

type ChoiceProps = {
  readonly difference: Difference
  readonly side: Side
  readonly onChoose: (side: Side) => void
}

function Choice({ difference: { key, mine, theirs }, side, onChoose }: ChoiceProps) {
  const sides: readonly (readonly [Side, string, Json | undefined, Json | undefined])[] = [
    ['mine', MERGE.mine, mine, theirs],
    ['theirs', MERGE.theirs, theirs, mine],
  ]
  return (
    <fieldset class="two-values">
      <legend>{wordsOfDottedName(key)}</legend>
      {sides.map(([each, words, value, other]) => (
        <label key={each} class={each === side ? 'side chosen' : 'side'}>
          <span class="side-name">
            <input
              type="radio"
              name={`merge-${key}`}
              checked={each === side}
              onChange={() => onChoose(each)}
            />
            {words}
          </span>
          <Lines value={value} other={other} />
        </label>
      ))}
    </fieldset>
  )
}

function Taken({
  heading,
  differences,
  side,
}: {
  readonly heading: string
  readonly differences: readonly Difference[]
  readonly side: Side
}) {
  if (differences.length === 0) return null
  return (
    <>
      <h3>{heading}</h3>
      <dl class="taken">
        {differences.map((difference) => (
          <div key={difference.key}>
            <dt>{wordsOfDottedName(difference.key)}</dt>
            <dd>
              <Lines value={difference[side]} other={difference[side === 'mine' ? 'theirs' : 'mine']} />
            </dd>
          </div>
        ))}
      </dl>
    </>
  )
}

/** Deleted elsewhere: what is here can bring it back, or live on under another id. */
function Deleted({ saver, model, theirs, onSaveAsNew, onSaved }: ConflictProps) {
  const [isFailed, setFailed] = useState(false)
  const bringBack = async () => {
    const sent = await restoreCrossing(theirs)
    setFailed(sent.state !== 'done')
    if (sent.state !== 'done') return
    await saver.saveOnTop(model.document.value, sent.kept)
    onSaved?.()
  }
  return (
    <section class="panel merge" aria-labelledby="merge-heading">
      <h2 id="merge-heading">{MERGE.deletedHeading}</h2>
      <p>{MERGE.deletedIntro}</p>
      {isFailed && <p class="issue">{SAVE_BAR.trouble}</p>}
      <div class="actions">
        <button type="button" class="save" onClick={() => void bringBack()}>
          {MERGE.bringBack}
        </button>
        <button type="button" onClick={onSaveAsNew}>
          {SAVE_BAR.saveAsNew}
        </button>
      </div>
    </section>
  )
}

function BothVersions({ saver, model, theirs, onSaved }: ConflictProps) {
  const [choices, setChoices] = useState<ReadonlyMap<string, Side>>(new Map())
  const mine = model.document.value
  const base = saver.base.value?.document ?? null
  const differences = differencesOf(base, mine, theirs.document)
  const ofKind = (kind: Difference['kind']) => differences.filter((each) => each.kind === kind)
  const choose = (key: string, side: Side) => setChoices(new Map([...choices, [key, side]]))
  const toChoose = ofKind('choose')
  const save = async () => {
    await saver.saveOnTop(broughtTogether(mine, theirs.document, differences, choices), theirs)
    onSaved?.()
  }
  return (
    <section class="panel merge" aria-labelledby="merge-heading">
      <h2 id="merge-heading">{MERGE.heading}</h2>
      <p>{MERGE.intro(theirs.version, whenWords(theirs.updatedAt))}</p>
      {differences.length === 0 && <p>{MERGE.same}</p>}
      {toChoose.length > 0 && <h3>{MERGE.both}</h3>}
      {toChoose.map((difference) => (
        <Choice
          key={difference.key}
          difference={difference}
          side={choices.get(difference.key) ?? 'mine'}
          onChoose={(side) => choose(difference.key, side)}
        />
      ))}
      <Taken heading={MERGE.takenTheirs} differences={ofKind('only-theirs')} side="theirs" />
      <Taken heading={MERGE.keptMine} differences={ofKind('only-mine')} side="mine" />
      <div class="actions">
        <button type="button" class="save" onClick={() => void save()}>
          {MERGE.save(theirs.version)}
        </button>
        <button type="button" onClick={() => saver.takeKept(theirs)}>
          {MERGE.takeTheirs}
        </button>
      </div>
    </section>
  )
}

/** Somebody else saved first: both versions side by side, and what shall hold. */
export function MergePanel(props: Props) {
  const state = props.saver.state.value
  if (state.state !== 'elsewhere') return null
  const { theirs } = state
  return theirs.deletedAt === null ? (
    <BothVersions {...props} theirs={theirs} />
  ) : (
    <Deleted {...props} theirs={theirs} />
  )
}
