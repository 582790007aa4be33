import { useLate } from '../late.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { ReplacedNote } from './replaced-note.tsx'

const load = () => import('./draft-bar.tsx')

/** The first answers do not wait for what saves them. */
export function LateDraftBar({ model }: { readonly model: CrossingModel }) {
  const late = useLate(load)
  return (
    <>
      {late === null ? <div class="save-bar" /> : <late.DraftBar model={model} />}
      <div role="status">
        <ReplacedNote draft={model} />
      </div>
    </>
  )
}
