import './job-sheet.css'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import type { Issue } from '../../shared/core/outcome.ts'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { longSection } from '../../shared/drawing/long-section.ts'
import { assumedValue, assumptionName } from '../../shared/text/assumption-words.ts'
import { asSentence } from '../../shared/text/by-system.ts'
import { issueSentence } from '../../shared/text/issue-sentences.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { statusWord } from '../../shared/text/release-sentences.ts'
import { verdictSentence } from '../../shared/text/verdict-sentence.ts'
import { SvgDrawing } from '../profile/svg-node.tsx'
import { say } from '../state/unit-choice.ts'
import { FURTHER } from '../words/further-words.ts'
import { placeWords } from '../words/place-words.ts'
import { SHELL } from '../words/shell-words.ts'
import { SheetFigures } from './sheet-figures.tsx'
import { SheetLines, SheetPits } from './sheet-lines.tsx'
import { SheetCautions, SheetChecks, SheetRelease } from './sheet-safety.tsx'
import { sheetWord } from './sheet-words.ts'

export type Sheeted =
  | { readonly state: 'none'; readonly issues: readonly Issue[] }
  | {
      readonly state: 'current' | 'former'
      readonly plan: Plan
      readonly input: CrossingInput
      readonly issues: readonly Issue[]
    }

type Props = {
  readonly name: string
  readonly answers: Sheeted
  /** Of the entry that was planned; null where the form holds another. */
  readonly shortHash: string | null
  readonly when: string
}
type PlannedProps = { readonly plan: Plan; readonly input: CrossingInput }

const standingOf = ({ state }: Sheeted): string =>
  sheetWord(state === 'none' ? 'notPlanned' : 'notReleased', say.value)

/** What makes two sheets the same sheet. */
export function sheetIdentity(answers: Sheeted, shortHash: string | null): string {
  const words = say.value
  return [
    `${SHELL.name} ${sheetWord('engine', words, { engine: ENGINE_VERSION })}`,
    ...(shortHash === null ? [] : [sheetWord('hash', words, { hash: shortHash })]),
    standingOf(answers),
  ].join(' · ')
}

const Issues = ({ issues }: { readonly issues: readonly Issue[] }) => (
  <ul>
    {issues.map((issue) => (
      <li key={`${issue.path} ${issue.code}`}>
        <b>{placeWords(issue.path)}:</b>{' '}
        {issue.code === 'required' ? sheetWord('missing', say.value) : issueSentence(issue, say.value.lang)}
      </li>
    ))}
  </ul>
)

function Drawing({ plan, input }: PlannedProps) {
  const { tree } = longSection(input, plan, { ...say.value, widthPx: 0, sheet: 'job', idPrefix: 'job' })
  return (
    <div class="sheet-drawing">
      <SvgDrawing tree={tree} />
    </div>
  )
}

function Assumed({ plan, input }: PlannedProps) {
  const words = say.value
  const standings = [...new Set(plan.assumptions.map(({ standing }) => standing))]
  const formulas = new Set(plan.workings.map(({ relation }) => relation)).size
  return (
    <section class="sheet-assumed">
      <h2>{FURTHER.assumptions.caption}</h2>
      {standings.map((standing) => (
        <p key={standing}>
          <b>{asSentence(planWord('standing', standing, words))}:</b>{' '}
          {plan.assumptions
            .filter((each) => each.standing === standing)
            .map((each) => `${assumptionName(each.name, words)} ${assumedValue(each, words)}`)
            .join(' · ')}
        </p>
      ))}
      <h2>{sheetWord('working', words)}</h2>
      <p>
        {sheetWord('workingSummary', words, {
          formulas: String(formulas),
          draws: String(input.spread.draws),
          seed: String(input.spread.seed),
        })}
      </p>
    </section>
  )
}

function Planned({ plan, input }: PlannedProps) {
  return (
    <>
      <p class="sheet-verdict">
        <b class={`sheet-status sheet-${plan.release.status}`}>
          {statusWord(plan.release.status, say.value.lang)}
        </b>{' '}
        {verdictSentence(plan, say.value)}
      </p>
      <Drawing plan={plan} input={input} />
      <SheetFigures plan={plan} input={input} />
      <SheetRelease plan={plan} />
      <SheetCautions plan={plan} />
      <SheetChecks plan={plan} />
      <SheetLines plan={plan} input={input} />
      <SheetPits plan={plan} />
      <Assumed plan={plan} input={input} />
    </>
  )
}

/** The crossing on paper: what a crew takes along, ticks and signs. */
export function JobSheet({ name, answers, shortHash, when }: Props) {
  const words = say.value
  return (
    <article class="job-sheet" lang={words.lang}>
      <header>
        <h1>{name === '' ? sheetWord('unnamed', words) : name}</h1>
        <p>
          <b>
            {sheetWord('kind', words)}, {standingOf(answers)}
          </b>
          , {sheetWord('printed', words, { when })}
        </p>
      </header>
      {answers.state === 'none' ? (
        <section>
          <p class="sheet-verdict">{sheetWord('noPlan', words)}.</p>
          <h2>{sheetWord('noPlanWhy', words)}</h2>
          <Issues issues={answers.issues} />
        </section>
      ) : (
        <>
          {answers.state === 'former' && (
            <section class="sheet-former">
              <p>{sheetWord('former', words)}</p>
              <Issues issues={answers.issues} />
            </section>
          )}
          <Planned plan={answers.plan} input={answers.input} />
        </>
      )}
      <footer>
        <p>{SHELL.caution}</p>
        <p>{sheetIdentity(answers, shortHash)}</p>
      </footer>
    </article>
  )
}
