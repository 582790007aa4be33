import { createContext } from 'preact'
import type { Plan } from '../../../shared/core/plan/plan.ts'

/** Ids of the relations this plan used: a figure none of them stands behind has no working to open. */
export const RecordedRelations = createContext<ReadonlySet<string>>(new Set())

export const relationsOf = (plan: Plan): ReadonlySet<string> =>
  new Set(plan.workings.map(({ relation }) => relation))
