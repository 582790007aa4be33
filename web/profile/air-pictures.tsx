import { useEffect, useRef, useState } from 'preact/hooks'
import {
  type HoseCurve,
  hoseCurves,
  type MarginLine,
  marginOverSites,
  type SupplyAndDemand,
  supplyAndDemand,
} from '../../shared/core/plan/air-curves.ts'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import { hosePicture, marginPicture, supplyPicture } from '../../shared/drawing/air-pictures.ts'
import { NO_NUMBER } from '../../shared/quantities/format-quantity.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { shown } from '../fields/shown.ts'
import { say } from '../state/unit-choice.ts'
import { AIR } from '../words/air-words.ts'
import { useBoxWidth } from './box-width.ts'
import { adoptDrawingRules } from './drawing-rules.ts'
import { SvgDrawing } from './svg-node.tsx'

adoptDrawingRules()

const W = AIR.pictures
/** Wider, the curves say no more. */
const WIDEST_PX = 640
/** Two hoses side by side where there is room for both. */
const SIDE_BY_SIDE_FROM_PX = 520
const PAUSE_MS = 400

type Data = {
  readonly supply: SupplyAndDemand
  readonly margins: readonly MarginLine[]
  readonly hoses: readonly HoseCurve[]
}

/** Rows of the table: every 2,000 ft, or 500 m. */
const SITES_M = {
  us: [0, 2, 4, 6, 8, 10, 12].map((thousandFt) => thousandFt * 304.8),
  si: [0, 500, 1000, 1500, 2000, 2500, 3000, 3500],
} as const

function useData(input: CrossingInput): Data | null {
  const sitesM = SITES_M[say.value.system]
  const [data, setData] = useState<Data | null>(null)
  useEffect(() => {
    const timer = setTimeout(() => {
      setData({
        supply: supplyAndDemand(input),
        margins: marginOverSites(input, sitesM),
        hoses: hoseCurves(input),
      })
    }, PAUSE_MS)
    return () => clearTimeout(timer)
  }, [input, sitesM])
  return data
}

type TableProps = {
  readonly caption: string
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

function Behind({ caption, columns, rows }: TableProps) {
  return (
    <details class="folded">
      <summary>{W.asTable}</summary>
      <DataTable
        isShort
        caption={caption}
        columns={columns}
        rows={rows.map((cells) => ({ key: cells.join(' '), cells }))}
      />
    </details>
  )
}

function Supply({ supply, widthPx }: { readonly supply: SupplyAndDemand; readonly widthPx: number }) {
  return (
    <>
      <SvgDrawing tree={supplyPicture(supply, { say: say.value, widthPx, id: 'air-supply' })} />
      <Behind
        caption={W.asTable}
        columns={W.supplyColumns}
        rows={supply.supply.map((each) => [
          shown(each.flowM3PerS, 'volumeFlow'),
          shown(each.gaugePa, 'gaugePressure'),
        ])}
      />
    </>
  )
}

const times = (fraction: number | null | undefined): string =>
  fraction === null || fraction === undefined ? NO_NUMBER : `${(1 + fraction).toFixed(1)} ×`

function Margins({
  margins,
  widthPx,
}: {
  readonly margins: readonly MarginLine[]
  readonly widthPx: number
}) {
  const altitudes = margins[0]?.points.map((each) => each.altitudeM) ?? []
  return (
    <>
      <SvgDrawing tree={marginPicture(margins, { say: say.value, widthPx, id: 'air-margin' })} />
      <Behind
        caption={W.asTable}
        columns={[W.marginColumn, ...margins.map((line) => shown(line.temperatureK, 'temperature'))]}
        rows={altitudes.map((altitudeM, place) => [
          shown(altitudeM, 'altitude'),
          ...margins.map((line) => times(line.points[place]?.marginFraction)),
        ])}
      />
    </>
  )
}

function Hoses({ hoses, widthPx }: { readonly hoses: readonly HoseCurve[]; readonly widthPx: number }) {
  const most = Math.max(...hoses.flatMap(({ points }) => points.map((each) => each.highGaugePa)))
  const eachPx = widthPx >= SIDE_BY_SIDE_FROM_PX ? widthPx / 2 - 8 : widthPx
  return (
    <>
      <div class="small-multiples">
        {hoses.map((curve, place) => (
          <SvgDrawing
            key={curve.boreM}
            tree={hosePicture(curve, most, { say: say.value, widthPx: eachPx, id: `air-hose-${place}` })}
          />
        ))}
      </div>
      <Behind
        caption={W.asTable}
        columns={W.hoseColumns}
        rows={hoses.flatMap(({ boreM, points }) =>
          points.map((each) => [
            shown(boreM, 'diameter'),
            shown(each.lengthM, 'altitude'),
            shown(each.lowGaugePa, 'gaugePressure'),
            shown(each.likelyGaugePa, 'gaugePressure'),
            shown(each.highGaugePa, 'gaugePressure'),
          ]),
        )}
      />
    </>
  )
}

/** Supply and demand, margin over sites, and a small picture for each bore of hose; a table behind each. */
export function AirPictures({ input }: { readonly input: CrossingInput }) {
  const box = useRef<HTMLDivElement>(null)
  const widthPx = Math.min(WIDEST_PX, useBoxWidth(box))
  const data = useData(input)
  return (
    <div ref={box} class="air-pictures">
      {data !== null && widthPx > 0 && (
        <>
          <Supply supply={data.supply} widthPx={widthPx} />
          <Margins margins={data.margins} widthPx={widthPx} />
          <Hoses hoses={data.hoses} widthPx={widthPx} />
        </>
      )}
    </div>
  )
}
