import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { Kind } from '../../shared/core/kinds.ts'
import { KINDS } from '../../shared/core/kinds.ts'
import { parseQuantity } from '../../shared/quantities/parse-quantity.ts'
import { parsePipeNote, parseSptNote } from '../../shared/quantities/parse-trade.ts'

const kinds = Object.keys(KINDS) as Kind[]
const SEED = 5_2026
const notations = [
  '42"', '42\'-6"', '42’ 6½”', '4 ft 7-1/4 in', '100#', 'Ø32', '1/4" per ft', '1 in 40', '85 °F', '3 h 10 min',
  '2" IPS DR-11', '3/4 K', '1" CTS', 'N=9', '900 dp', '1,200 ft', '5.1 mrad/√m', '-1e5 Pa', '11/4', '32 mm PE',
] // biome-ignore format: rows
const pieces = fc.constantFrom(
  ...notations.flatMap((each) => [...each]),
  '\ud800',
  '\udfff',
  '\u200b',
  '∞',
  '√',
  '½',
)

const randomText = fc.string({ unit: 'binary', maxLength: 90 })
const shuffledNotation = fc.array(pieces, { maxLength: 30 }).map((each) => each.join(''))
const bentNotation = fc
  .tuple(fc.constantFrom(...notations), fc.nat(20), fc.nat(3), fc.string({ unit: 'grapheme', maxLength: 3 }))
  .map(([text, at, out, put]) => text.slice(0, at) + put + text.slice(at + out))
const notText = fc.anything({ withBigInt: true, withDate: true, withSparseArray: true, withTypedArray: true })
const junk = fc.oneof(
  randomText,
  shuffledNotation,
  bentNotation,
  fc.string({ minLength: 65, maxLength: 5000 }),
  notText,
)

it('2,000 pieces of junk are read or refused with a code, never thrown at', () => {
  fc.assert(
    fc.property(
      junk,
      fc.constantFrom(...kinds),
      fc.constantFrom('refuse', 'si', 'us'),
      (text, kind, bare) => {
        const found = parseQuantity(text, kind, { bare })
        if (found.ok) expect(Number.isFinite(found.valueSi)).toBe(true)
        else expect(found.issue.code).toMatch(/^[a-z-]+$/)
        for (const note of [parsePipeNote(text), parseSptNote(text)]) {
          if (!note.ok) expect(note.issue.code).toMatch(/^[a-z-]+$/)
        }
      },
    ),
    { seed: SEED, numRuns: 2000 },
  )
})
