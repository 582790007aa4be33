import { useLate } from '../late.ts'

const load = () => import('./connection-note.tsx')

/** Lies over the foot of the screen and moves nothing, so it may come after the page. */
export function LateConnectionNote() {
  const late = useLate(load)
  return late === null ? null : <late.ConnectionNote />
}
