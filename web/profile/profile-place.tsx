import './profile.css'
import { useEffect, useState } from 'preact/hooks'
import type { CrossingModel } from '../state/crossing-model.ts'
import { keptHeightPx } from './kept-height.ts'

type LateProfile = typeof import('./profile.tsx')['Profile']

/** Keeps the drawing's room from the first paint on; the drawing itself is fetched after it. */
export function ProfilePlace({ model }: { readonly model: CrossingModel }) {
  const [Drawn, setDrawn] = useState<LateProfile | null>(null)
  useEffect(() => {
    import('./profile.tsx').then(({ Profile }) => setDrawn(() => Profile))
  }, [])
  if (model.answers.value.state === 'none') return null
  if (Drawn !== null) return <Drawn model={model} />
  const heightPx = keptHeightPx()
  return <div class="panel profile-place" style={heightPx === null ? {} : { minHeight: `${heightPx}px` }} />
}
