/** Longest quantity read; nothing a person types for one number is longer. */
export const LONGEST_QUANTITY = 64

// biome-ignore format: a table reads better in rows
const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8',
  '⅓': '1/3', '⅔': '2/3', '⅕': '1/5', '⅖': '2/5', '⅗': '3/5', '⅘': '4/5', '⅙': '1/6', '⅚': '5/6', '⅒': '1/10',
}

/**
 * The same quantity in plain signs: curly quotes and primes as ' and ", two apostrophes as inches, `6½` as `6 1/2`,
 * typographic minus and hyphens as -, wide and thin spaces as one space, ² ³ as 2 3, ℃ as °C.
 */
export function plainNotation(text: string): string {
  return text
    .replace(/[\s\u00a0\u2000-\u200b\u202f\u205f\u2060\u3000\ufeff]+/g, ' ')
    .replace(/[‘’‛′ʹʼ´`＇]/g, "'")
    .replace(/[“”„‟″ʺ＂]/g, '"')
    .replace(/''/g, '"')
    .replace(/[−‐‑‒–—﹣－]/g, '-')
    .replace(/(\d?)([½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚⅒])/g, (_, whole: string, sign: string) =>
      whole === '' ? (FRACTIONS[sign] ?? sign) : `${whole} ${FRACTIONS[sign] ?? sign}`,
    )
    .replace(/[⁄∕]/g, '/')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/μ/g, 'µ')
    .replace(/℃/g, '°C')
    .replace(/℉/g, '°F')
    .replace(/[º˚]/g, '°')
    .trim()
}

/** At most as much of what was given as an answer may carry back. */
export function shortened(given: unknown): string {
  const text = typeof given === 'string' ? given : describe(given)
  return text.length <= LONGEST_QUANTITY ? text : `${text.slice(0, LONGEST_QUANTITY - 1)}…`
}

function describe(given: unknown): string {
  if (given === null) return 'null'
  if (Array.isArray(given)) return 'a list'
  if (typeof given === 'number' || typeof given === 'boolean' || typeof given === 'bigint')
    return String(given)
  return typeof given
}
