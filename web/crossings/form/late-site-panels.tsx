import { useEffect, useState } from 'preact/hooks'
import type { CrossingModel } from '../../state/crossing-model.ts'

type Panels = typeof import('./site-panels.tsx')['SitePanels']

/** All of it folded, and far down: fetched once the page stands, so that the first screen need not wait for it. */
export function LateSitePanels({ model }: { readonly model: CrossingModel }) {
  const [SitePanels, setPanels] = useState<Panels | null>(null)
  useEffect(() => {
    import('./site-panels.tsx').then((found) => setPanels(() => found.SitePanels))
  }, [])
  return SitePanels === null ? null : <SitePanels model={model} />
}
