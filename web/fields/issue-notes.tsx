import type { Issue } from '../../shared/core/outcome.ts'
import { candidateMeaning, issueSentence, issueWithoutReadings } from '../../shared/text/issue-sentences.ts'
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
          <p>{(onTake ? issueWithoutReadings : issueSentence)(issue, say.value.lang)}</p>
          {onTake && issue.candidates && issue.candidates.length > 0 && (
            <div class="candidates">
              {issue.candidates.map((candidate) => {
                const means = candidateMeaning(candidate, say.value.lang)
                return (
                  <button
                    key={candidate.value}
                    type="button"
                    class="small"
                    onClick={() => onTake(candidate.value)}
                  >
                    {candidate.value}
                    {means !== null && <span class="means"> {means}</span>}
                  </button>
                )
              })}
            </div>
          )}
        </div>
      ))}
    </div>
  )
}
