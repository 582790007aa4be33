import { useLate } from '../../late.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'

const load = () => import('./site-panels.tsx')

/** What lies in the ground and who was asked about it; all of it far down: fetched once the page stands, so that the first screen need not wait for it. */
export function LateSitePanels({ model }: { readonly model: CrossingModel }) {
  const late = useLate(load)
  return late === null ? null : <late.SitePanels model={model} />
}
