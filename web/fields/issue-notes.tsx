import type { Issue } from '../../shared/core/outcome.ts'
import { issueSentence } from '../../shared/text/issue-sentences.ts'
import { say } from '../state/unit-choice.ts'

type Props = {
  readonly id: string
  readonly issues: readonly Issue[]
  /** Takes one of the readings a question offers. */
  readonly onTake?: (value: string) => void
}

/** Why a field is refused, in a sentence, with the readings it may have had as buttons. */
export function IssueNotes({ id, issues, onTake }: Props) {
  return (
    <div id={id} class="issues" aria-live="polite">
      {issues.map((issue) => (
        <div key={`${issue.path} ${issue.code}`} class="issue">
          <p>{issueSentence(issue, say.value.lang)}</p>
          {onTake && issue.candidates && issue.candidates.length > 0 && (
            <div class="candidates">
              {issue.candidates.map(({ value, means }) => (
                <button key={value} type="button" class="small" onClick={() => onTake(value)}>
                  {value}
                  {means !== '' && !value.includes(means) && <span class="means"> {means}</span>}
                </button>
              ))}
            </div>
          )}
        </div>
      ))}
    </div>
  )
}
