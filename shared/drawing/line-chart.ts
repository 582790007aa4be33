import { LABEL_PX, LINE_PX, label, SMALL_PX } from './label.ts'
import {
  group,
  lineBetween,
  node,
  type Point,
  polygon,
  polyline,
  rect,
  type SvgNode,
  textNode,
} from './svg-tree.ts'
import { BOLD, textWidth, wrapped } from './text-width.ts'

export type Tick = { readonly at: number; readonly text: string }
export type Axis = {
  readonly words: string
  readonly least: number
  readonly most: number
  readonly ticks: readonly Tick[]
}
export type Curve = {
  readonly points: readonly (readonly [x: number, y: number])[]
  /** 'main', 'other' or 'thin': told apart by dash and weight as well as colour. */
  readonly style: 'main' | 'other' | 'thin'
  /** Stands at its end; empty: none. */
  readonly words: string
}
export type Chart = {
  readonly id: string
  readonly title: string
  readonly desc: string
  readonly widthPx: number
  readonly heightPx: number
  readonly x: Axis
  readonly y: Axis
  /** Between two curves: how sure they are. */
  readonly band?: readonly (readonly [x: number, low: number, high: number])[]
  readonly curves: readonly Curve[]
  readonly spot?: { readonly at: readonly [x: number, y: number]; readonly words: string }
}

const LEFT_PX = 52
const RIGHT_PX = 14
const FOOT_PX = 40
const TICK_PX = 4
const GAP_PX = 6

/** Where words begin so that they keep to the drawing; half-bold ones take more. */
const kept = (words: string, startPx: number, widthPx: number): number =>
  Math.max(GAP_PX, Math.min(startPx, widthPx - GAP_PX - BOLD * textWidth(words, SMALL_PX)))

type Placed = {
  readonly chart: Chart
  readonly topPx: number
  readonly place: (x: number, y: number) => Point
}

function placed(chart: Chart, topPx: number): Placed {
  const { x, y, widthPx, heightPx } = chart
  const across = widthPx - LEFT_PX - RIGHT_PX
  const up = heightPx - topPx - FOOT_PX
  const share = (axis: Axis, value: number) =>
    Math.min(1, Math.max(0, (value - axis.least) / (axis.most - axis.least)))
  return {
    chart,
    topPx,
    place: (atX, atY) => [LEFT_PX + across * share(x, atX), topPx + up * (1 - share(y, atY))],
  }
}

function axisNodes({ chart: { x, y, widthPx, heightPx }, place, topPx }: Placed): readonly SvgNode[] {
  const [left, bottom] = place(x.least, y.least)
  const [right, top] = place(x.most, y.most)
  return [
    lineBetween('axis', [left, bottom], [right, bottom]),
    lineBetween('axis', [left, bottom], [left, top]),
    ...x.ticks.flatMap(({ at, text }) => {
      const [tick] = place(at, y.least)
      return [
        lineBetween('axis', [tick, bottom], [tick, bottom + TICK_PX]),
        label(text, kept(text, tick - textWidth(text, SMALL_PX) / 2, widthPx), bottom + LINE_PX, {
          sizePx: SMALL_PX,
        }),
      ]
    }),
    ...y.ticks.flatMap(({ at, text }) => {
      const [, tick] = place(x.least, at)
      return [
        lineBetween('rule', [left, tick], [right, tick]),
        label(text, left - GAP_PX, tick + TICK_PX, { anchor: 'end', sizePx: SMALL_PX }),
      ]
    }),
    label(x.words, widthPx - RIGHT_PX, heightPx - GAP_PX, { anchor: 'end', sizePx: SMALL_PX }),
    label(y.words, GAP_PX, topPx - GAP_PX - TICK_PX, { sizePx: SMALL_PX }),
  ]
}

function curveNodes({ chart, place }: Placed): readonly SvgNode[] {
  const { band = [], curves, spot } = chart
  const outline = [
    ...band.map(([x, , high]) => place(x, high)),
    ...[...band].reverse().map(([x, low]) => place(x, low)),
  ]
  return [
    ...(outline.length === 0 ? [] : [polygon('curve-band', outline)]),
    ...curves
      .filter(({ points }) => points.length > 1)
      .map(({ points, style }) =>
        polyline(
          `curve curve-${style}`,
          points.map(([x, y]) => place(x, y)),
        ),
      ),
    ...(spot === undefined ? [] : [spotMark(place(...spot.at))]),
    ...wordsApart(wishesOf({ chart, place })),
  ]
}

const spotMark = ([x, y]: Point): SvgNode => node('circle', { class: 'spot', cx: x, cy: y, r: 5 })

/** Words with where they would best stand. */
type Wish = { readonly words: string; readonly at: Point; readonly isBold: boolean }

function wishesOf({ chart: { curves, spot, widthPx }, place }: Pick<Placed, 'chart' | 'place'>) {
  const ends = curves.flatMap(({ points, words }): readonly Wish[] => {
    const last = points.at(-1)
    if (words === '' || last === undefined) return []
    const [x, y] = place(...last)
    const wordsPx = textWidth(words, SMALL_PX)
    // Beside the end where there is room, else over it.
    const isBeside = x + GAP_PX + wordsPx < widthPx - GAP_PX
    const at: Point = isBeside ? [x + GAP_PX, y + TICK_PX] : [kept(words, x - wordsPx, widthPx), y - LINE_PX]
    return [{ words, at, isBold: false }]
  })
  if (spot === undefined) return ends
  const [x, y] = place(...spot.at)
  const at: Point = [kept(spot.words, x + GAP_PX + 2, widthPx), y - GAP_PX - 2]
  return [{ words: spot.words, at, isBold: true }, ...ends]
}

/** Lines by which words may move away from others, the nearest first. */
const MOVES = [0, -1, 1, -2, 2, -3, 3]

/** Each where it wishes, or a line or so above or below, so that none stands on another. */
function wordsApart(wishes: readonly Wish[]): readonly SvgNode[] {
  const taken: { readonly left: number; readonly right: number; readonly y: number }[] = []
  return wishes.map(({ words, at: [left, wished], isBold }) => {
    const right = left + (isBold ? BOLD : 1) * textWidth(words, SMALL_PX)
    const isFree = (y: number) =>
      taken.every((each) => Math.abs(each.y - y) >= LINE_PX || right <= each.left || left >= each.right)
    const move = MOVES.find((lines) => isFree(wished + lines * LINE_PX)) ?? 0
    const y = wished + move * LINE_PX
    taken.push({ left, right, y })
    return label(words, left, y, { sizePx: SMALL_PX, ...(isBold ? { className: 'heading' } : {}) })
  })
}

/** Curves over two axes, with words at their ends. What is drawn stands in a table beside it as well. */
export function lineChart(chart: Chart): SvgNode {
  const { id, widthPx, heightPx } = chart
  const heading = wrapped(chart.title, LABEL_PX * BOLD, widthPx - 2 * GAP_PX)
  const topPx = (heading.length + 1) * LINE_PX + 2 * GAP_PX
  const drawn = placed(chart, topPx)
  return node(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'underlane-drawing line-chart',
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      width: widthPx,
      height: heightPx,
      viewBox: `0 0 ${widthPx} ${heightPx}`,
      'font-size': LABEL_PX,
    },
    [
      textNode('title', { id: `${id}-title` }, chart.title),
      textNode('desc', { id: `${id}-desc` }, chart.desc),
      rect('sheet', 0, 0, widthPx, heightPx),
      ...heading.map((text, line) => label(text, GAP_PX, (line + 1) * LINE_PX, { className: 'heading' })),
      group('axes', axisNodes(drawn)),
      group('curves', curveNodes(drawn)),
    ],
  )
}
