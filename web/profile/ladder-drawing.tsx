import { useRef } from 'preact/hooks'
import type { AirPart } from '../../shared/core/plan/air-part.ts'
import { pressureLadder } from '../../shared/drawing/pressure-ladder.ts'
import { say } from '../state/unit-choice.ts'
import { useBoxWidth } from './box-width.ts'
import { adoptDrawingRules } from './drawing-rules.ts'
import { SvgDrawing } from './svg-node.tsx'

adoptDrawingRules()

/** Wider, the bars say no more. */
const WIDEST_PX = 720

export function LadderDrawing({ air }: { readonly air: AirPart }) {
  const box = useRef<HTMLDivElement>(null)
  const widthPx = Math.min(WIDEST_PX, useBoxWidth(box))
  return (
    <div ref={box}>{widthPx > 0 && <SvgDrawing tree={pressureLadder(air, { ...say.value, widthPx })} />}</div>
  )
}
