import type { AirPart } from '../../shared/core/plan/air-part.ts'
import { useLate } from '../late.ts'

const load = () => import('./ladder-drawing.tsx')

/** As high as the bars of a ladder and the words under them. */
const heightPx = (air: AirPart): number => 92 + (air.ladder.length + 1) * 42

/** The pressures drawn, in a place kept for them. */
export function LadderPlace({ air }: { readonly air: AirPart }) {
  const late = useLate(load)
  return (
    <div class="ladder-place" style={{ minHeight: `${heightPx(air)}px` }}>
      {late !== null && <late.LadderDrawing air={air} />}
    </div>
  )
}
