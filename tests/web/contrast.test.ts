import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

/** Every text colour with every ground it stands on, as the style sheets put them together. */
const TEXT_ON: readonly (readonly [string, readonly string[]])[] = [
  ['ink', ['paper', 'sheet', 'wash', 'hold-wash', 'check-wash', 'note-wash']],
  ['soft', ['paper', 'sheet', 'wash']],
  ['mark', ['paper', 'sheet', 'wash', 'hold-wash', 'check-wash']],
  ['mark-ink', ['mark']],
  ['hold', ['paper', 'sheet', 'hold-wash']],
  ['check', ['paper', 'sheet', 'check-wash']],
  ['note', ['paper', 'sheet', 'note-wash']],
]
/** Edges of controls and shapes that mean something. */
const EDGES_ON: readonly (readonly [string, readonly string[]])[] = [
  ['edge', ['paper', 'sheet']],
  ['bore', ['paper', 'sheet']],
]

const CSS = readFileSync(new URL('../../web/styles/tokens.css', import.meta.url), 'utf8')

function tokensOf(selector: string): ReadonlyMap<string, string> {
  const start = CSS.indexOf(`${selector} {`)
  if (start < 0) throw new Error(`no ${selector}`)
  const block = CSS.slice(start, CSS.indexOf('}', start))
  return new Map(
    [...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name = '', value = '']) => [name, value]),
  )
}

/** Relative luminance and contrast ratio of WCAG 2.2, success criterion 1.4.3. */
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0)
}
function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b)
  return (light + 0.05) / (dark + 0.05)
}

test('black on white is 21 to 1, and #767676 on white 4.54, as WCAG says', () => {
  expect(contrast('#000000', '#ffffff')).toBe(21)
  expect(contrast('#767676', '#ffffff').toFixed(2)).toBe('4.54')
})

describe.each([
  [':root[data-theme="light"]', 4.5],
  [':root[data-theme="dark"]', 4.5],
  [':root[data-theme="sun"]', 7],
  [':root[data-theme]', 4.5],
] as const)('%s', (selector, least) => {
  const tokens = tokensOf(selector)
  const pairs = (on: typeof TEXT_ON) =>
    on.flatMap(([front, backs]) =>
      backs.map((back) => {
        const [a, b] = [tokens.get(front), tokens.get(back)]
        if (a === undefined || b === undefined) throw new Error(`no ${front} or ${back}`)
        return { pair: `${front} on ${back}`, ratio: contrast(a, b) }
      }),
    )

  test(`text is at least ${least} to 1`, () => {
    expect(pairs(TEXT_ON).filter(({ ratio }) => ratio < least)).toEqual([])
  })
  test('edges are at least 3 to 1', () => {
    expect(pairs(EDGES_ON).filter(({ ratio }) => ratio < 3)).toEqual([])
  })
  test('names the same colours as the others', () => {
    expect([...tokens.keys()].sort()).toEqual([...tokensOf(':root[data-theme="light"]').keys()].sort())
  })
})
