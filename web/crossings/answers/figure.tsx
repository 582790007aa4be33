import { useContext } from 'preact/hooks'
import { RecordedRelations } from './recorded-relations.ts'
import { showWorking, type WorkingOf } from './working-shown.ts'

type Props = {
  readonly label: string
  readonly value: string
  readonly note?: string
  readonly working?: Omit<WorkingOf, 'label' | 'value'>
}

/** A figure with its name; one that was worked out opens its working, or what it is made of. */
export function Figure({ label, value, note, working }: Props) {
  const body = (
    <>
      <span class="figure-label">{label}</span>
      <span class="figure-value">{value}</span>
      {note && <span class="figure-note">{note}</span>}
    </>
  )
  const recorded = useContext(RecordedRelations)
  const hasWorking =
    working !== undefined && (working.parts !== undefined || working.relations.some((id) => recorded.has(id)))
  if (!hasWorking) return <div class="figure">{body}</div>
  return (
    <button type="button" class="figure" onClick={() => showWorking({ label, value, ...working })}>
      {body}
    </button>
  )
}
