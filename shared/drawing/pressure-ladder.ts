import type { AirPart } from '../core/plan/plan.ts'
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

/** Pressures from compressor to tool as bars, with the limits a tool works between and the verdict in words. */
export function pressureLadder(air: AirPart, options: Options): SvgNode {
  const { lang, system } = options
  const say = { lang, system }
  const words = drawingWords(say)
  const widthPx = Math.max(280, options.widthPx)
  const rungs = rungsOf(air, options)
  const mostPa = Math.max(HIGH_ABOVE_PA * 1.1, ...rungs.map((rung) => rung.gaugePa))
  const x = (gaugePa: number) => SIDE_PX + (gaugePa / mostPa) * (widthPx - 2 * SIDE_PX)
  const topPx = 24
  const footPx = topPx + rungs.length * RUNG_PX
  const bars = rungs.flatMap((rung, index) => {
    const y = topPx + index * RUNG_PX
    const isTool = index === rungs.length - 1
    const flag = isTool ? `: ${planWord('airFlag', air.flag, say)}` : ''
    const lost = rung.lostPa >= SHOWN_FROM_PA ? `, ${words('ladderLost', { lostPa: rung.lostPa })}` : ''
    const text = `${rung.name} ${saidQuantity(rung.gaugePa, 'gaugePressure', say)}${flag}${lost}`
    const isBad = isTool && air.flag !== 'good'
    return [
      label(text, SIDE_PX, y + 14, { sizePx: LABEL_PX, className: isBad ? 'bad' : '' }),
      rect(barClass(air.flag, isTool), SIDE_PX, y + 20, x(rung.gaugePa) - SIDE_PX, BAR_PX),
    ]
  })
  const lowText = words('ladderLow', { pa: LOW_BELOW_PA })
  const highText = words('ladderHigh', { pa: HIGH_ABOVE_PA })
  // Across the bars only: words stay free of lines.
  const limits = rungs.flatMap((_, index) =>
    [LOW_BELOW_PA, HIGH_ABOVE_PA].map((pa) => {
      const y = topPx + index * RUNG_PX + 17
      return lineBetween('limit', [x(pa), y], [x(pa), y + BAR_PX + 6])
    }),
  )
  const endOf = (text: string, pa: number) => Math.max(x(pa) + 4, SIDE_PX + textWidth(text, SMALL_PX))
  const foot = [
    label(lowText, endOf(lowText, LOW_BELOW_PA), footPx + 16, { anchor: 'end', sizePx: SMALL_PX }),
    label(highText, Math.min(endOf(highText, HIGH_ABOVE_PA), widthPx - SIDE_PX), footPx + 16 + LINE_PX, {
      anchor: 'end',
      sizePx: SMALL_PX,
    }),
  ]
  const riding = wrapped(
    words('ladderUnloaded', { pa: air.unloadedGaugePa }),
    SMALL_PX,
    widthPx - 2 * SIDE_PX,
  ).map((text, index) => label(text, SIDE_PX, footPx + 20 + (2 + index) * LINE_PX, { sizePx: SMALL_PX }))
  const heightPx = footPx + 20 + (2 + riding.length) * LINE_PX
  const id = options.idPrefix ?? 'ladder'
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
      textNode(
        'desc',
        { id: `${id}-desc` },
        words('ladderDesc', {
          compressorGaugePa: air.compressorGaugePa,
          toolGaugePa: air.toolGaugePa,
          flag: air.flag,
        }),
      ),
      rect('sheet', 0, 0, widthPx, heightPx),
      label(words('ladderTitle'), SIDE_PX, 16, { className: 'heading' }),
      group('rungs', bars),
      group('limits', limits),
      group('limit-words', [...foot, ...riding]),
    ],
  )
}
