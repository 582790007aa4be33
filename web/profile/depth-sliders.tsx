import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { LongSection } from '../../shared/drawing/long-section.ts'
import type { Say } from '../../shared/text/language.ts'
import type { useDepthChange } from './depth-change.ts'
import { type DepthHandle, depthHandles } from './depth-handles.ts'
import { DepthSlider } from './depth-slider.tsx'

type Props = {
  readonly section: LongSection
  readonly input: CrossingInput
  readonly radiusM: number
  readonly change: ReturnType<typeof useDepthChange>
  readonly say: Say
  readonly isFormer: boolean
  readonly onHold: (isHeld: boolean) => void
}

const THUMB_PX = 48
/** Narrower than this nothing can be taken hold of; then neighbours overlap. */
const LEAST_PX = 24

/** As wide as a thumb, or as far as half way to the next. */
function widthsOf(handles: readonly DepthHandle[], x: (stationM: number) => number): readonly number[] {
  return handles.map(({ stationM }, index) => {
    const away = [handles[index - 1], handles[index + 1]].flatMap((other) =>
      other === undefined ? [] : [Math.abs(x(other.stationM) - x(stationM))],
    )
    return Math.max(LEAST_PX, Math.min(THUMB_PX, ...away))
  })
}

/** One for every depth the file holds. */
export function DepthSliders({ section, input, radiusM, change, say, isFormer, onHold }: Props) {
  const { frame, line } = section
  const handles = depthHandles(input, line, radiusM)
  const widths = widthsOf(handles, frame.x)
  return (
    <>
      {handles.map((handle, index) => (
        <DepthSlider
          key={handle.path}
          handle={handle}
          xPx={frame.x(handle.stationM)}
          yPx={frame.y(line.axisLevelM(handle.stationM))}
          widthPx={widths[index] ?? THUMB_PX}
          pxPerMDown={frame.pxPerMDown}
          say={say}
          isResting={isFormer && !change.isUnderWay()}
          onWrite={(depth) => change.write(handle.path, depth)}
          onHold={(isHeld) => {
            onHold(isHeld)
            if (!isHeld) change.finish()
          }}
          onTakeBack={() => {
            onHold(false)
            change.takeBack()
          }}
        />
      ))}
    </>
  )
}
