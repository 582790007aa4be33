import type { CrossingModel } from '../../state/crossing-model.ts'
import { EmergencyPanel } from './emergency-panel.tsx'
import { LinesPanel } from './lines-panel.tsx'
import { LocatePanel } from './locate-panel.tsx'
import { PastBoresPanel } from './past-bores-panel.tsx'
import { PrivatePanel } from './private-panel.tsx'
import { SeenPanel } from './seen-panel.tsx'

/** What is asked of the site rather than of the bore. */
export const SitePanels = ({ model }: { readonly model: CrossingModel }) => (
  <>
    <PastBoresPanel model={model} />
    <LinesPanel model={model} />
    <PrivatePanel model={model} />
    <LocatePanel model={model} />
    <SeenPanel model={model} />
    <EmergencyPanel model={model} />
  </>
)
