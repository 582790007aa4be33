import { useEffect, useState } from 'preact/hooks'
import type { CrossingModel } from '../state/crossing-model.ts'

type Rules = typeof import('./place-rules.tsx')['PlaceRules']

/** The rules of 38 places are a good deal of text: fetched after the page, and kept with it for when there is no signal. */
export function LatePlaceRules({ model }: { readonly model: CrossingModel }) {
  const [PlaceRules, setRules] = useState<Rules | null>(null)
  useEffect(() => {
    import('./place-rules.tsx').then((found) => setRules(() => found.PlaceRules))
  }, [])
  return PlaceRules === null ? null : <PlaceRules model={model} />
}
