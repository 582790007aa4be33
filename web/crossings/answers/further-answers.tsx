import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { AirAnswer } from './air-panel.tsx'
import { AssumptionsPanel } from './assumptions-panel.tsx'
import { BorePanel } from './bore-panel.tsx'
import { ClearancesPanel } from './clearances-panel.tsx'
import { GroundAnswer } from './ground-panel.tsx'
import { MapPanel } from './map-panel.tsx'
import { PathPanel } from './path-panel.tsx'
import { PipeAnswer, PitsPanel } from './pipe-panel.tsx'
import { PricePanel } from './price-panel.tsx'
import { CautionsPanel, ChecklistPanel } from './safety-panels.tsx'
import { WearPanel } from './wear-panel.tsx'
import { WorkingDialog } from './working-dialog.tsx'

/** The answers below the first screen. */
type Props = { readonly plan: Plan; readonly input: CrossingInput }

export function FurtherAnswers({ plan, input }: Props) {
  return (
    <>
      <AirAnswer plan={plan} input={input} />
      <MapPanel input={input} />
      <BorePanel plan={plan} />
      <ClearancesPanel plan={plan} input={input} />
      <GroundAnswer plan={plan} input={input} />
      <PathPanel plan={plan} />
      <PipeAnswer plan={plan} />
      <PitsPanel plan={plan} />
      <PricePanel plan={plan} />
      <WearPanel plan={plan} />
      <CautionsPanel plan={plan} />
      <ChecklistPanel plan={plan} />
      <AssumptionsPanel plan={plan} />
      <WorkingDialog plan={plan} />
    </>
  )
}
