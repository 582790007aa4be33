import { useEffect, useState } from 'preact/hooks'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'

type Late = typeof import('./air-pictures.tsx')['AirPictures']

/** Drawn only for whoever opens them. */
export function LateAirPictures({ input }: { readonly input: CrossingInput }) {
  const [Drawn, setDrawn] = useState<Late | null>(null)
  useEffect(() => {
    import('./air-pictures.tsx').then(({ AirPictures }) => setDrawn(() => AirPictures))
  }, [])
  return Drawn === null ? null : <Drawn input={input} />
}
