import { useEffect, useState } from 'preact/hooks'
import type { CrossingModel } from '../../state/crossing-model.ts'

type More = typeof import('./air-more.tsx')['AirMore']

/** Fetched once the page stands: the plain form does not wait for it. */
export function LateAirMore({ model }: { readonly model: CrossingModel }) {
  const [AirMore, setMore] = useState<More | null>(null)
  useEffect(() => {
    import('./air-more.tsx').then((found) => setMore(() => found.AirMore))
  }, [])
  return AirMore === null ? null : <AirMore model={model} />
}
