import { type LongSectionOptions, longSection } from '../../shared/drawing/long-section.ts'
import { allNodes, type SvgNode } from '../../shared/drawing/svg-tree.ts'
import { BOLD, textWidth } from '../../shared/drawing/text-width.ts'
import { type CrossingDocument, inputOf, planOf } from '../support/crossings.ts'

/** A street with a line of every evidence, ends of other kinds, slopes, pits between and all surfaces. */
export const BUSY: CrossingDocument = {
  units: 'si',
  name: 'Busy <street> & "more"',
  line: { length: '20 m' },
  depth: { launch: '1.3 m', reception: '1.1 m', to: 'centre' },
  surface: [
    { station: '0 m', level: '0 m' },
    { station: '9 m', level: '0.3 m' },
    { station: '20 m', level: '0.1 m' },
  ],
  ends: { launch: { kind: 'handhole' }, reception: { kind: 'bank' } },
  shots: [{ to: '11 m', depth: '1.2 m' }, { to: '20 m' }],
  over: ['lawn', 'walk', 'road', 'pavers', 'drive', 'slab', 'ditch', 'other'].map((kind, index) => ({
    from: `${index * 2.5} m`,
    to: `${index * 2.5 + 2.5} m`,
    kind,
  })),
  ground: [
    { to: '8 m', word: 'firm clay', waterTable: '1.0 m' },
    { from: '8 m', to: '14 m', word: 'loose sand' },
    { from: '14 m', uscs: 'GW', sptN: 30, stones: 'many' },
  ],
  pipes: [{ system: 'pe-iso', size: '32', sdr: 11 }],
  tool: { diameter: '65 mm' },
  air: {
    compressor: { freeAirDelivery: '5 m3/min', pressure: '7 bar' },
    hoses: [{ bore: '19 mm', length: '30 m' }],
  },
  utilities: [
    { kind: 'gas', station: '4 m', depth: '0.6 m', depthTo: 'top', diameter: '60 mm', evidence: 'exposed' },
    { kind: 'electric', station: '4.4 m', evidence: 'marked' },
    {
      kind: 'telecom',
      station: '5 m',
      depth: '0.5 m',
      depthTo: 'top',
      diameter: '100 mm',
      evidence: 'detected',
      crossingAngle: '60 deg',
    },
    {
      kind: 'water',
      station: '7 m',
      depth: '1.0 m',
      depthTo: 'top',
      diameter: '150 mm',
      evidence: 'exposed',
    },
    {
      kind: 'sewer',
      station: '12.5 m',
      depth: '1.6 m',
      depthTo: 'bottom',
      diameter: '200 mm',
      evidence: 'proved',
      crossingAngle: '45 deg',
    },
    { kind: 'storm', station: '13 m', evidence: 'records', diameter: '300 mm' },
    { kind: 'lighting', station: '13 m', depth: '0.4 m', depthTo: 'centre', evidence: 'records' },
    {
      kind: 'irrigation',
      station: '19 m',
      depth: '0.2 m',
      depthTo: 'top',
      diameter: '32 mm',
      evidence: 'exposed',
    },
    { kind: 'steam', offset: '1.2 m', depth: '1 m', depthTo: 'top', diameter: '150 mm', evidence: 'marked' },
    { kind: 'oil', offset: '-6 m', evidence: 'records' },
  ],
}

const WIDE: LongSectionOptions = { system: 'us', lang: 'en', widthPx: 1200 }

export function drawn(document: CrossingDocument, options: Partial<LongSectionOptions> = {}) {
  const input = inputOf(document)
  const plan = planOf(document)
  return { input, plan, ...longSection(input, plan, { ...WIDE, ...options }) }
}

export const classOf = (node: SvgNode): readonly string[] => String(node.attributes.class ?? '').split(' ')
export const withClass = (tree: SvgNode, name: string): readonly SvgNode[] =>
  allNodes(tree).filter((node) => classOf(node).includes(name))
export function theOne(tree: SvgNode, name: string): SvgNode {
  const [found, ...others] = withClass(tree, name)
  if (!found || others.length > 0) throw new Error(`${others.length + (found ? 1 : 0)} of ${name}`)
  return found
}

export const numberOf = (node: SvgNode | undefined, name: string): number => Number(node?.attributes[name])
export const pointsOf = (node: SvgNode | undefined): readonly { x: number; y: number }[] =>
  String(node?.attributes.points ?? '')
    .split(' ')
    .map((pair) => {
      const [x, y] = pair.split(',').map(Number)
      return { x: x ?? Number.NaN, y: y ?? Number.NaN }
    })

/** Pixels to a metre along and down, read off the drawing: the length dimension and the exaggeration. */
export function scalesOf({
  tree,
  plan,
  exaggeration,
}: Pick<ReturnType<typeof drawn>, 'tree' | 'plan' | 'exaggeration'>) {
  const whole = withClass(tree, 'length-dimension').at(-1)?.children[0]
  const along = (numberOf(whole, 'x2') - numberOf(whole, 'x1')) / plan.bore.lengthM
  return { along, down: along * exaggeration }
}

export type Words = {
  readonly text: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly size: number
}

/** Every text with the room it takes. */
export function wordsOf(tree: SvgNode): readonly Words[] {
  return allNodes(tree)
    .filter((node) => node.tag === 'text')
    .map((node) => {
      const text = node.text ?? ''
      const size = numberOf(node, 'font-size')
      const isBold = classOf(node).some((name) => name === 'heading' || name === 'bad')
      const width = textWidth(text, size) * (isBold ? BOLD : 1)
      const x = numberOf(node, 'x')
      const y = numberOf(node, 'y')
      const anchor = node.attributes['text-anchor']
      const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x
      return { text, size, left, right: left + width, top: y - size * 0.75, bottom: y + size * 0.22 }
    })
}
