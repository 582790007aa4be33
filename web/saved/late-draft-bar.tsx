import { useEffect, useState } from 'preact/hooks'
import type { CrossingModel } from '../state/crossing-model.ts'
import { ReplacedNote } from './replaced-note.tsx'

type Bar = typeof import('./draft-bar.tsx')['DraftBar']

/** Fetched once the page stands: the first answers do not wait for what saves them. */
export function LateDraftBar({ model }: { readonly model: CrossingModel }) {
  const [DraftBar, setBar] = useState<Bar | null>(null)
  useEffect(() => {
    import('./draft-bar.tsx').then((found) => setBar(() => found.DraftBar))
  }, [])
  return (
    <>
      {DraftBar === null ? <div class="save-bar" /> : <DraftBar model={model} />}
      <div role="status">
        <ReplacedNote draft={model} />
      </div>
    </>
  )
}
