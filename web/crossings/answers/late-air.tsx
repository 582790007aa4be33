import { useEffect, useState } from 'preact/hooks'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'

type Details = typeof import('./air-details.tsx')['AirDetails']
type Props = { readonly plan: Plan; readonly input: CrossingInput }

/** The rest of the air answer: fetched once the first answers stand. */
export function LateAir({ plan, input }: Props) {
  const [AirDetails, setDetails] = useState<Details | null>(null)
  useEffect(() => {
    import('./air-details.tsx').then((found) => setDetails(() => found.AirDetails))
  }, [])
  return AirDetails === null ? null : <AirDetails plan={plan} input={input} />
}
