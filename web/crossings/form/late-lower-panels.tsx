import { useLate } from '../../late.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'

const load = () => import('./lower-panels.tsx')

/** The lower half of the form, below the first screen of every page there is. */
export function LateLowerPanels({ model }: { readonly model: CrossingModel }) {
  const late = useLate(load)
  return late === null ? null : <late.LowerPanels model={model} />
}
