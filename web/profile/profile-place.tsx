import './profile.css'
import { useEffect, useState } from 'preact/hooks'
import type { CrossingModel } from '../state/crossing-model.ts'

type LateProfile = typeof import('./profile.tsx')['Profile']

/** Keeps the drawing's room from the first paint on; the drawing itself is fetched after it. */
export function ProfilePlace({ model }: { readonly model: CrossingModel }) {
  const [Drawn, setDrawn] = useState<LateProfile | null>(null)
  useEffect(() => {
    import('./profile.tsx').then(({ Profile }) => setDrawn(() => Profile))
  }, [])
  if (model.answers.value.state === 'none') return null
  return <div class="profile-place">{Drawn !== null && <Drawn model={model} />}</div>
}
