import { useLate } from '../../late.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'

const load = () => import('./air-more.tsx')

/** Fetched once the page stands: the plain form does not wait for it. */
export function LateAirMore({ model }: { readonly model: CrossingModel }) {
  const late = useLate(load)
  return late === null ? null : <late.AirMore model={model} />
}
