import type { AirPart } from '../core/plan/air-part.ts'
import type { Say } from '../text/language.ts'
import { airElementWord, planWord } from '../text/plan-words.ts'
import { saidQuantity } from '../text/say-quantity.ts'
import { LABEL_PX, LINE_PX, label, SMALL_PX } from './label.ts'
import type { LongSectionOptions } from './long-section.ts'
import { drawingWords } from './section-facts.ts'
import { group, lineBetween, node, rect, type SvgNode, textNode } from './svg-tree.ts'
import { textWidth, wrapped } from './text-width.ts'

/** Where a tool's pressure is called too low and high, gauge: 70 and 110 psi. Common practice. */
const LOW_BELOW_PA = 482_633
const HIGH_ABOVE_PA = 758_423

type Options = Pick<LongSectionOptions, 'system' | 'lang' | 'widthPx' | 'idPrefix'>
type Rung = { readonly name: string; readonly gaugePa: number; readonly lostPa: number }

/** A smaller loss would be shown as none. */
const SHOWN_FROM_PA = 6000
const SIDE_PX = 10
const TOP_PX = 24
const RUNG_PX = 42
const BAR_PX = 10

/** The pressures met on the way: at the compressor, then after each thing the air passes. */
function rungsOf(air: AirPart, { system, lang }: Options): readonly Rung[] {
  const say = { system, lang }
  const words = drawingWords(say)
  const after = air.ladder.map(
    (step, index): Rung => ({
      name:
        index === air.ladder.length - 1
          ? words('ladderTool')
          : words('ladderAfter', { element: airElementWord(step.element, say) }),
      gaugePa: step.outletGaugePa,
      lostPa: step.inletGaugePa - step.outletGaugePa,
    }),
  )
  return [{ name: words('ladderCompressor'), gaugePa: air.compressorGaugePa, lostPa: 0 }, ...after]
}

const barClass = (flag: AirPart['flag'], isTool: boolean): string => {
  if (!isTool || flag === 'good') return 'bar'
  return flag === 'high' ? 'bar bar-high' : 'bar bar-low'
}

type Ladder = {
  readonly air: AirPart
  readonly say: Say
  readonly words: ReturnType<typeof drawingWords>
  readonly widthPx: number
  readonly rungs: readonly Rung[]
  readonly x: (gaugePa: number) => number
  readonly footPx: number
}

function ladderOf(air: AirPart, options: Options): Ladder {
  const say = { lang: options.lang, system: options.system }
  const widthPx = Math.max(280, options.widthPx)
  const rungs = rungsOf(air, options)
  const mostPa = Math.max(HIGH_ABOVE_PA * 1.1, ...rungs.map((rung) => rung.gaugePa))
  const x = (gaugePa: number) => SIDE_PX + (gaugePa / mostPa) * (widthPx - 2 * SIDE_PX)
  return { air, say, words: drawingWords(say), widthPx, rungs, x, footPx: TOP_PX + rungs.length * RUNG_PX }
}

/** Half the height of the ends of a band. */
const BAND_END_PX = 4

/** From the worst hose to the best, over the tool's bar. */
function bandNodes({ band }: AirPart, x: Ladder['x'], y: number): readonly SvgNode[] {
  if (band === undefined) return []
  const ends = [x(Math.max(0, band.lowGaugePa ?? 0)), x(band.highGaugePa)] as const
  if (ends[1] - ends[0] < 2) return []
  return [
    lineBetween('band', [ends[0], y], [ends[1], y]),
    ...ends.map((end) => lineBetween('band', [end, y - BAND_END_PX], [end, y + BAND_END_PX])),
  ]
}

/** A bar for each pressure, what it is over it, and across it where the limits lie. */
function rungNodes({ air, rungs, say, words, x }: Ladder): readonly SvgNode[] {
  return rungs.flatMap((rung, index) => {
    const y = TOP_PX + index * RUNG_PX
    const isTool = index === rungs.length - 1
    const flag = isTool ? `: ${planWord('airFlag', air.flag, say)}` : ''
    const lost = rung.lostPa >= SHOWN_FROM_PA ? `, ${words('ladderLost', { lostPa: rung.lostPa })}` : ''
    const text = `${rung.name} ${saidQuantity(rung.gaugePa, 'gaugePressure', say)}${flag}${lost}`
    const className = isTool && air.flag !== 'good' ? 'bad' : ''
    return [
      label(text, SIDE_PX, y + 14, { sizePx: LABEL_PX, className }),
      rect(barClass(air.flag, isTool), SIDE_PX, y + 20, x(rung.gaugePa) - SIDE_PX, BAR_PX),
      ...[LOW_BELOW_PA, HIGH_ABOVE_PA].map((pa) =>
        lineBetween('limit', [x(pa), y + 17], [x(pa), y + BAR_PX + 23]),
      ),
      ...(isTool ? bandNodes(air, x, y + 20 + BAR_PX / 2) : []),
    ]
  })
}

/** What the limits are, under them, and how high the pressure goes while the tool does not hammer. */
function footNodes({ air, words, widthPx, x, footPx }: Ladder): readonly SvgNode[] {
  const rightPx = widthPx - SIDE_PX
  const limits = [
    { text: words('ladderLow', { pa: LOW_BELOW_PA }), pa: LOW_BELOW_PA },
    { text: words('ladderHigh', { pa: HIGH_ABOVE_PA }), pa: HIGH_ABOVE_PA },
  ].map(({ text, pa }, index) => {
    const end = Math.min(Math.max(x(pa) + 4, SIDE_PX + textWidth(text, SMALL_PX)), rightPx)
    return label(text, end, footPx + 16 + index * LINE_PX, { anchor: 'end', sizePx: SMALL_PX })
  })
  const riding = wrapped(
    words('ladderUnloaded', { pa: air.unloadedGaugePa }),
    SMALL_PX,
    rightPx - SIDE_PX,
  ).map((text, index) => label(text, SIDE_PX, footPx + 20 + (2 + index) * LINE_PX, { sizePx: SMALL_PX }))
  return [...limits, ...riding]
}

/** Pressures from compressor to tool as bars, with the limits a tool works between and the verdict in words. */
export function pressureLadder(air: AirPart, options: Options): SvgNode {
  const ladder = ladderOf(air, options)
  const { words, widthPx, footPx } = ladder
  const foot = footNodes(ladder)
  const heightPx = footPx + 20 + foot.length * LINE_PX
  const id = options.idPrefix ?? 'ladder'
  const { compressorGaugePa, toolGaugePa, flag } = air
  return node(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'underlane-drawing pressure-ladder',
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      width: widthPx,
      height: heightPx,
      viewBox: `0 0 ${widthPx} ${heightPx}`,
      'font-size': LABEL_PX,
    },
    [
      textNode('title', { id: `${id}-title` }, words('ladderTitle')),
      textNode('desc', { id: `${id}-desc` }, words('ladderDesc', { compressorGaugePa, toolGaugePa, flag })),
      rect('sheet', 0, 0, widthPx, heightPx),
      label(words('ladderTitle'), SIDE_PX, 16, { className: 'heading' }),
      group('rungs', rungNodes(ladder)),
      group('limit-words', foot),
    ],
  )
}
