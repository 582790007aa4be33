/** Longest word compared: names and units are short, and a pasted page must not cost a quadratic search. */
const LONGEST = 40

/** Changes of one letter (put in, left out, replaced, two neighbours swapped) that turn one word into the other. */
export function editDistance(from: string, to: string): number {
  const rows: number[][] = [Array.from({ length: to.length + 1 }, (_, column) => column)]
  for (let row = 1; row <= from.length; row++) {
    const current = [row]
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1]
      let best = Math.min(
        at(rows, row - 1, column) + 1,
        (current[column - 1] ?? 0) + 1,
        at(rows, row - 1, column - 1) + (same ? 0 : 1),
      )
      const swapped =
        row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]
      if (swapped) best = Math.min(best, at(rows, row - 2, column - 2) + 1)
      current.push(best)
    }
    rows.push(current)
  }
  return at(rows, from.length, to.length)
}

const at = (rows: readonly number[][], row: number, column: number): number => rows[row]?.[column] ?? 0

/** The known word a person most likely meant; null when nothing is near (at most 2 changes, and under half the word). */
export function nearestWord(word: string, known: Iterable<string>): string | null {
  if (word.length === 0 || word.length > LONGEST) return null
  const wanted = word.toLowerCase()
  let best: string | null = null
  let bestDistance = Math.min(2, Math.floor(wanted.length / 2)) + 1
  for (const each of known) {
    if (Math.abs(each.length - wanted.length) >= bestDistance) continue
    const distance = editDistance(wanted, each.toLowerCase())
    if (distance < bestDistance) {
      best = each
      bestDistance = distance
    }
  }
  return best
}
