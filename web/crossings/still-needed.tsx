import type { Issue } from '../../shared/core/outcome.ts'
import { issueSentence } from '../../shared/text/issue-sentences.ts'
import { focusField } from '../fields/focus-field.ts'
import { say } from '../state/unit-choice.ts'
import { ANSWERS } from '../words/answer-words.ts'
import { FORM } from '../words/form-words.ts'
import { placeWords } from '../words/place-words.ts'

type IssuesProps = { readonly issues: readonly Issue[] }

/** Where most will fill it in: a line by its length, a pipe by its note. */
const filledInAt = (path: string): string =>
  path === 'line' ? 'line.length' : path.replace(/^(pipes\.\d+)\.system$/, '$1.note')

function PlaceLink({ path }: { readonly path: string }) {
  if (path === '') return null
  return (
    <button type="button" class="link" onClick={() => focusField(path)}>
      {placeWords(path)}
    </button>
  )
}

const Wrong = ({ issues }: IssuesProps) => (
  <ul class="problems">
    {issues.map((issue) => (
      <li key={`${issue.path} ${issue.code}`}>
        <PlaceLink path={issue.path} /> {issueSentence(issue, say.value.lang)}
      </li>
    ))}
  </ul>
)

/** What is still to be said, as places to go to: nobody has done anything wrong. */
const Needed = ({ issues }: IssuesProps) => (
  <ul class="problems">
    {issues.map(({ path }) => (
      <li key={path}>
        <PlaceLink path={filledInAt(path)} />
      </li>
    ))}
  </ul>
)

/** Why there is no plan of what stands in the form: what cannot be read, then what is still needed. */
export function Problems({ issues, isBegun }: IssuesProps & { readonly isBegun: boolean }) {
  const needed = issues.filter(({ code }) => code === 'required')
  const wrong = issues.filter(({ code }) => code !== 'required')
  const wantsLength = needed.some(({ path }) => filledInAt(path) === 'line.length')
  return (
    <>
      {!isBegun && <p>{wantsLength ? FORM.start.begin : ANSWERS.waiting}</p>}
      {wrong.length > 0 && <Wrong issues={wrong} />}
      {needed.length > 0 && (
        <>
          <p>{FORM.start.needed}</p>
          <Needed issues={needed} />
        </>
      )}
    </>
  )
}
