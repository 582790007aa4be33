import '../../shared/text/spanish.ts'
import { describe, expect, test } from 'vitest'
import { demoDocument } from '../support/crossings.ts'
import { drawn, withClass, wordsOf } from './drawn.ts'

describe('colours of lines', () => {
  const from = (jurisdiction: string | null) => {
    const locate = jurisdiction === null ? {} : { locate: { jurisdiction } }
    const utilities = [{ kind: 'electric', station: '9 ft', evidence: 'marked' }]
    return drawn({
      ...demoDocument('irrigation-sleeve'),
      utilities,
      ...locate,
      line: { length: '20 ft' },
      over: [],
    })
  }
  const said = (place: string | null) =>
    wordsOf(from(place).tree)
      .map((each) => each.text)
      .join(' ')
  test('are those of the place: power is red in Virginia and orange in Australia', () => {
    expect(withClass(from('US-VA').tree, 'mark-red').length).toBeGreaterThan(1)
    expect(withClass(from('AU').tree, 'mark-orange').length).toBeGreaterThan(1)
    expect(withClass(from('AU').tree, 'mark-red')).toHaveLength(0)
    expect(said('AU')).toContain('as Australia marks them')
  })
  test('elsewhere the drawing says whose they are', () => {
    expect(said('GB')).toContain('Go by shape and name')
    for (const place of [null, 'US-VA', 'CA-ON']) expect(said(place)).not.toContain('Go by shape and name')
  })
})
