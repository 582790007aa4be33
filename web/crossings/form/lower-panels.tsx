import type { CrossingModel } from '../../state/crossing-model.ts'
import { EmergencyPanel } from './emergency-panel.tsx'
import { GroundPanel, OverPanel } from './ground-panel.tsx'
import { LinesPanel } from './lines-panel.tsx'
import { LocatePanel } from './locate-panel.tsx'
import { PastBoresPanel } from './past-bores-panel.tsx'
import { PrivatePanel } from './private-panel.tsx'
import { RatesPanel } from './rates-panel.tsx'
import { SeenPanel } from './seen-panel.tsx'

/** The ground, what is in it and above it, who was asked, and what it costs. */
export const LowerPanels = ({ model }: { readonly model: CrossingModel }) => (
  <>
    <GroundPanel model={model} />
    <OverPanel model={model} />
    <PastBoresPanel model={model} />
    <LinesPanel model={model} />
    <PrivatePanel model={model} />
    <LocatePanel model={model} />
    <SeenPanel model={model} />
    <EmergencyPanel model={model} />
    <RatesPanel model={model} />
  </>
)
