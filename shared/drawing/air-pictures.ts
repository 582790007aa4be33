import type { Kind } from '../core/kinds.ts'
import type { HoseCurve, MarginLine, SupplyAndDemand } from '../core/plan/air-curves.ts'
import { AIR_PICTURE_WORDS, type AirPictureWords } from '../text/air-picture-words.ts'
import { fill } from '../text/fill.ts'
import type { Say, TextValues } from '../text/language.ts'
import { saidQuantity } from '../text/say-quantity.ts'
import { type Axis, lineChart } from './line-chart.ts'
import type { SvgNode } from './svg-tree.ts'

export type PictureOptions = { readonly say: Say; readonly widthPx: number; readonly id: string }

const words =
  (say: Say) =>
  (key: keyof AirPictureWords, values: TextValues = {}): string =>
    fill(AIR_PICTURE_WORDS[say.lang][key], values, say)

/** 1, 2 or 5 times a power of ten: about five ticks over a range, in the units the reader sees. */
function niceStep(range: number): number {
  const rough = range / 5
  const power = 10 ** Math.floor(Math.log10(rough))
  return [1, 2, 5, 10].map((times) => times * power).find((step) => step >= rough) ?? rough
}

/** Unit steps of each system in SI: ticks fall on round numbers of what is shown. */
const STEP_UNITS: Readonly<Record<Say['system'], Partial<Record<Kind, number>>>> = {
  us: { gaugePressure: 6894.757, volumeFlow: 0.000_471_947, altitude: 0.3048, length: 0.3048 },
  si: { gaugePressure: 1e5, volumeFlow: 1 / 60, altitude: 1, length: 1 },
}

function axisOf(title: string, kind: Kind, most: number, say: Say): Axis {
  const unit = STEP_UNITS[say.system][kind] ?? 1
  const step = niceStep(most / unit) * unit
  const count = Math.max(1, Math.ceil(most / step - 1e-9))
  const ticks = Array.from({ length: count + 1 }, (_, index) => {
    const at = index * step
    return { at, text: saidQuantity(at, kind, say) }
  })
  return { words: title, least: 0, most: count * step, ticks }
}

/** Every other tick's words where there is no room for all. */
const thinned = (axis: Axis, keepEvery: number): Axis => ({
  ...axis,
  ticks: axis.ticks.filter((_, index) => index % keepEvery === 0),
})

/** Supply and demand at the tool over the air drawn: they meet where the tool runs. */
export function supplyPicture(found: SupplyAndDemand, { say, widthPx, id }: PictureOptions): SvgNode {
  const w = words(say)
  const { supply, demand, meet } = found
  const flows = supply.concat(meet === null ? [] : [meet]).map((each) => each.flowM3PerS)
  const most = Math.max(...supply.concat(demand).map((each) => each.gaugePa), 1)
  const mostFlow = Math.max(...flows, 1e-6) * 1.05
  const within = demand.filter((each) => each.flowM3PerS <= mostFlow)
  return lineChart({
    id,
    title: w('supplyTitle'),
    desc: w('supplyDesc', meet === null ? {} : { ...meet }),
    widthPx,
    heightPx: 280,
    x: thinned(axisOf(w('flow'), 'volumeFlow', mostFlow, say), widthPx < 420 ? 2 : 1),
    y: axisOf(w('pressure'), 'gaugePressure', most, say),
    curves: [
      {
        points: supply.map((each) => [each.flowM3PerS, each.gaugePa] as const),
        style: 'main',
        words: w('supply'),
      },
      {
        points: within.map((each) => [each.flowM3PerS, each.gaugePa] as const),
        style: 'other',
        words: w('demand'),
      },
    ],
    ...(meet === null
      ? {}
      : { spot: { at: [meet.flowM3PerS, meet.gaugePa] as const, words: w('meet', { ...meet }) } }),
  })
}

const TIMES = (value: number): string => `${Number(value.toFixed(1))} ×`

/** Air there is over air wanted, a line for each warmth, over the altitude of the site. */
export function marginPicture(lines: readonly MarginLine[], { say, widthPx, id }: PictureOptions): SvgNode {
  const w = words(say)
  const ratios = lines.flatMap(({ points }) =>
    points.flatMap(({ marginFraction }) => (marginFraction === null ? [] : [1 + marginFraction])),
  )
  const most = Math.max(2, ...ratios)
  const step = niceStep(most)
  const count = Math.ceil(most / step)
  const highest = Math.max(...lines.flatMap(({ points }) => points.map((each) => each.altitudeM)))
  return lineChart({
    id,
    title: w('marginTitle'),
    desc: w('marginDesc'),
    widthPx,
    heightPx: 280,
    x: thinned(axisOf(w('altitude'), 'altitude', highest, say), widthPx < 420 ? 2 : 1),
    y: {
      words: w('margin'),
      least: 0,
      most: count * step,
      ticks: Array.from({ length: count + 1 }, (_, index) => ({
        at: index * step,
        text: TIMES(index * step),
      })),
    },
    curves: [
      {
        points: [
          [0, 1],
          [highest, 1],
        ],
        style: 'thin',
        words: '',
      },
      ...lines.map(({ temperatureK, points }, index) => ({
        points: points.flatMap(({ altitudeM, marginFraction }) =>
          marginFraction === null ? [] : [[altitudeM, 1 + marginFraction] as const],
        ),
        style: index === 0 || index === lines.length - 1 ? ('main' as const) : ('other' as const),
        words:
          index === 0 || index === lines.length - 1 ? saidQuantity(temperatureK, 'temperature', say) : '',
      })),
    ],
  })
}

/** One bore of hose: pressure at the tool by length, with its band. All of them share their axes. */
export function hosePicture(
  curve: HoseCurve,
  mostGaugePa: number,
  { say, widthPx, id }: PictureOptions,
): SvgNode {
  const w = words(say)
  const { boreM, isOurs, points } = curve
  const longest = Math.max(...points.map((each) => each.lengthM))
  const x = axisOf(w('length'), 'altitude', longest, say)
  return lineChart({
    id,
    title: w(isOurs ? 'hoseTitleOurs' : 'hoseTitle', { boreM }),
    desc: w('hoseDesc'),
    widthPx,
    heightPx: 190,
    x: thinned({ ...x, most: longest, ticks: x.ticks.filter(({ at }) => at <= longest) }, 2),
    y: thinned(axisOf(w('pressure'), 'gaugePressure', mostGaugePa, say), 2),
    band: points.map((each) => [each.lengthM, each.lowGaugePa, each.highGaugePa] as const),
    curves: [
      {
        points: points.map((each) => [each.lengthM, each.likelyGaugePa] as const),
        style: 'main',
        words: '',
      },
    ],
  })
}
