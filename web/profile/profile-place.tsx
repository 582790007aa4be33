import './profile.css'
import { useLate } from '../late.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { keptHeightPx } from './kept-height.ts'

const load = () => import('./profile.tsx')

/** Keeps the drawing's room from the first paint on; the drawing itself is fetched after it. */
export function ProfilePlace({ model }: { readonly model: CrossingModel }) {
  const late = useLate(load)
  if (model.answers.value.state === 'none') return null
  if (late !== null) return <late.Profile model={model} />
  const heightPx = keptHeightPx()
  return <div class="panel profile-place" style={heightPx === null ? {} : { minHeight: `${heightPx}px` }} />
}
