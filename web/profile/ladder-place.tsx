import { useEffect, useState } from 'preact/hooks'
import type { AirPart } from '../../shared/core/plan/air-part.ts'

type LateLadder = typeof import('./ladder-drawing.tsx')['LadderDrawing']

/** As high as the bars of a ladder and the words under them. */
const heightPx = (air: AirPart): number => 92 + (air.ladder.length + 1) * 42

/** The pressures drawn, in a place kept for them. */
export function LadderPlace({ air }: { readonly air: AirPart }) {
  const [Drawn, setDrawn] = useState<LateLadder | null>(null)
  useEffect(() => {
    import('./ladder-drawing.tsx').then(({ LadderDrawing }) => setDrawn(() => LadderDrawing))
  }, [])
  return (
    <div class="ladder-place" style={{ minHeight: `${heightPx(air)}px` }}>
      {Drawn !== null && <Drawn air={air} />}
    </div>
  )
}
