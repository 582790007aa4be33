import type { UtilityKind } from '../core/plan/crossing-input.ts'
import { node, type SvgNode } from './svg-tree.ts'

/** Colours of the codes for marks on the ground. 'grey' is ours, for a line no code has a colour for. */
export type MarkColour =
  | 'yellow'
  | 'red'
  | 'orange'
  | 'blue'
  | 'purple'
  | 'green'
  | 'white'
  | 'brown'
  | 'grey'

/** Whose code: the APWA uniform color code, or that of Australia. */
export type Palette = 'apwa' | 'australia'

/** The code of a place. Where none of ours is known to hold, the APWA one, and the drawing says so. */
export const paletteOf = (jurisdiction: string | null): Palette =>
  /^AU(-|$)/i.test(jurisdiction ?? '') ? 'australia' : 'apwa'

/** Places that mark by the APWA code: the United States and Canada, and a crossing that names no place. */
export const isMarkedByApwa = (jurisdiction: string | null): boolean =>
  jurisdiction === null || /^(US|CA)(-|$)/i.test(jurisdiction)

/** What Australia marks otherwise (AS 5488, second hand); the rest as far as we know alike. */
const AUSTRALIA: Readonly<Partial<Record<UtilityKind, MarkColour>>> = {
  electric: 'orange',
  lighting: 'orange',
  telecom: 'white',
  oil: 'brown',
}

type Mark = {
  readonly colour: MarkColour
  /** A shape of its own for each kind, in a field from −6 to 6 each way: told apart without colour. */
  readonly shape: string
}

const MARKS: Readonly<Record<UtilityKind, Mark>> = {
  gas: { colour: 'yellow', shape: 'M0-6L6 5H-6Z' },
  propane: { colour: 'yellow', shape: 'M0 6L6-5H-6Z' },
  oil: { colour: 'yellow', shape: 'M-3-6H3L6 0L3 6H-3L-6 0Z' },
  steam: { colour: 'yellow', shape: 'M-6-6H6L0 0L6 6H-6L0 0Z' },
  electric: { colour: 'red', shape: 'M2-6L-5 1H-1L-2 6L5-1H1Z' },
  lighting: { colour: 'red', shape: 'M0-6L1.5-1.5L6 0L1.5 1.5L0 6L-1.5 1.5L-6 0L-1.5-1.5Z' },
  telecom: { colour: 'orange', shape: 'M-5-5H5V5H-5Z' },
  water: { colour: 'blue', shape: 'M0-6C3-2 5 0 5 2A5 4 0 0 1-5 2C-5 0-3-2 0-6Z' },
  reclaimed: { colour: 'purple', shape: 'M0 6C3 2 5 0 5-2A5 4 0 0 0-5-2C-5 0-3 2 0 6Z' },
  irrigation: { colour: 'purple', shape: 'M-2-6H2V-2H6V2H2V6H-2V2H-6V-2H-2Z' },
  sewer: { colour: 'green', shape: 'M0-6L6 0L0 6L-6 0Z' },
  storm: { colour: 'green', shape: 'M-6-4H6L3 5H-3Z' },
  septic: { colour: 'green', shape: 'M0-6L6-1L4 6H-4L-6-1Z' },
  other: { colour: 'grey', shape: 'M-6-3H6V3H-6Z' },
}

export const markColour = (kind: UtilityKind, palette: Palette): MarkColour =>
  (palette === 'australia' ? AUSTRALIA[kind] : undefined) ?? MARKS[kind].colour

/** The shape of a kind in its colour, outlined so that yellow shows on paper. */
export const utilityGlyph = (kind: UtilityKind, x: number, y: number, palette: Palette): SvgNode =>
  node(
    'g',
    {
      class: `glyph mark-${markColour(kind, palette)}`,
      transform: `translate(${Math.round(x * 100) / 100} ${Math.round(y * 100) / 100})`,
    },
    [node('path', { d: MARKS[kind].shape })],
  )
