import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { useLate } from '../../late.ts'

type Props = { readonly plan: Plan; readonly input: CrossingInput }
const load = () => import('./air-details.tsx')

/** The rest of the air answer: fetched once the first answers stand. */
export function LateAir({ plan, input }: Props) {
  const late = useLate(load)
  return late === null ? null : <late.AirDetails plan={plan} input={input} />
}
