import type { Issue } from '../../shared/core/outcome.ts'
import { say } from '../state/unit-choice.ts'
import { issueWords } from './issue-words.ts'

type Props = {
  readonly id: string
  readonly issues: readonly Issue[]
  /** Takes one of the readings a question offers. */
  readonly onTake?: (value: string) => void
}

type NoteProps = Pick<Props, 'onTake'> & { readonly issue: Issue }

function IssueNote({ issue, onTake }: NoteProps) {
  const words = issueWords()
  if (words === null) return null
  const { candidateMeaning, issueSentence, issueWithoutReadings } = words
  return (
    <div class="issue">
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
  )
}

/** Why a field is refused, in a sentence, with the readings it may have had as buttons. */
export const IssueNotes = ({ id, issues, onTake }: Props) => (
  <div id={id} class="issues" aria-live="polite">
    {issues.map((issue) => (
      <IssueNote
        key={`${issue.path} ${issue.code}`}
        issue={issue}
        {...(onTake === undefined ? {} : { onTake })}
      />
    ))}
  </div>
)
