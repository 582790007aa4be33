/** Widths in ems of a wide common sans-serif face: where another is used, text turns out narrower, never wider. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[ijl.,'’|:;!]/, 0.34],
  [/[ftr()[\]/-]/, 0.42],
  [/\s/, 0.33],
  [/[mwMW@%—]/, 0.98],
  [/[A-Z×=+±<>]/, 0.76],
]
const OTHER = 0.64

/** Half-bold letters are wider than their size says. */
export const BOLD = 1.13

/** How wide a text is at most, in the units of its size. */
export function textWidth(text: string, sizePx: number): number {
  let ems = 0
  for (const character of text) ems += WIDTHS.find(([signs]) => signs.test(character))?.[1] ?? OTHER
  return ems * sizePx
}

/** Words onto lines no wider than asked; a single word wider than that keeps its line. */
export function wrapped(text: string, sizePx: number, widthPx: number): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && textWidth(`${last} ${word}`, sizePx) <= widthPx) {
      lines[lines.length - 1] = `${last} ${word}`
    } else lines.push(word)
  }
  return lines
}
