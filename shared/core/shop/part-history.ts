import type { BoreUse } from './exposure.ts'

/** A bore of one tool on one day. */
export type ToolBore = BoreUse & { readonly id: string; readonly tool: string; readonly on: string }

/** A piece that is kept apart from its tool; `off` is the first day it was no longer in. */
export type Piece = {
  readonly id: string
  readonly name: string
  readonly key: string
  readonly tool: string | null
  readonly fitted: readonly { readonly tool: string; readonly on: string; readonly off: string | null }[]
  readonly usedBeforeS: number
}

const isIn = (piece: Piece, tool: string, on: string): boolean =>
  piece.fitted.some((each) => each.tool === tool && each.on <= on && (each.off === null || on < each.off))

/** Each bore once, however often its record came in. */
export function eachOnce<Each extends { readonly id: string }>(records: readonly Each[]): readonly Each[] {
  return [...new Map(records.map((each) => [each.id, each])).values()]
}

/** The bores a piece was in, whichever tool it sat in then. */
export const boresOfPiece = (piece: Piece, bores: readonly ToolBore[]): readonly ToolBore[] =>
  eachOnce(bores).filter((bore) => isIn(piece, bore.tool, bore.on))

/**
 * The bores of what sits in a tool under this key and is not kept apart: all since it was last replaced, but for those
 * that belong to a piece. So every bore of the tool counts for one piece, or for the tool's own part, and never for both.
 */
export const boresOfOwnPart = (
  tool: string,
  key: string,
  bores: readonly ToolBore[],
  pieces: readonly Piece[],
  replacedOn: string | null = null,
): readonly ToolBore[] =>
  eachOnce(bores).filter(
    (bore) =>
      bore.tool === tool &&
      (replacedOn === null || bore.on >= replacedOn) &&
      !pieces.some((piece) => piece.key === key && isIn(piece, tool, bore.on)),
  )

/** The piece that sits in a tool under this key on a day; null: the tool's own. */
export const pieceIn = (tool: string, key: string, on: string, pieces: readonly Piece[]): Piece | null =>
  pieces.find((piece) => piece.key === key && isIn(piece, tool, on)) ?? null
