import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { EN_CHECKLIST } from '../../shared/text/en-checklist.ts'
import { sha256 } from '../../web/sheet/sha256.ts'
import { LAYERS, signOffLayer } from '../../web/sheet/sign-off-layer.ts'

describe('the job sheet', () => {
  test('its hash is the one the command line prints', () => {
    // FIPS 180-4, the one-block example.
    expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        expect(sha256(text)).toBe(createHash('sha256').update(text).digest('hex'))
      }),
    )
  })

  test('its check list is signed in three layers, none of them empty', () => {
    const layers = Object.keys(EN_CHECKLIST).map((id) => signOffLayer({ id }))
    for (const layer of LAYERS) expect(layers.filter((each) => each === layer).length).toBeGreaterThan(4)
  })
})
