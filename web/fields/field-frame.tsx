import type { ComponentChildren } from 'preact'
import type { Issue } from '../../shared/core/outcome.ts'
import { IssueNotes } from './issue-notes.tsx'

type Props = {
  readonly id: string
  readonly label: string
  readonly hint?: string | undefined
  /** What was understood, when it is not what stands in the field. */
  readonly reading?: string | null
  readonly issues: readonly Issue[]
  readonly onTake?: (value: string) => void
  readonly children: ComponentChildren
}

/** A label, the control, what was read, and what is wrong; the control is described by the last two. */
export function FieldFrame({ id, label, hint, reading, issues, onTake, children }: Props) {
  return (
    <div class={issues.length > 0 ? 'field refused' : 'field'}>
      <label for={id}>{label}</label>
      {children}
      {(hint || reading) && (
        <p id={`${id}-hint`} class="hint">
          {reading ?? hint}
        </p>
      )}
      <IssueNotes id={`${id}-issues`} issues={issues} {...(onTake ? { onTake } : {})} />
    </div>
  )
}

export const describedBy = (id: string): string => `${id}-hint ${id}-issues`
