import { describe, expect, test } from 'vitest'
import { listAt, textAt, valueAt, withValue } from '../../web/state/document-path.ts'

const CROSSING = {
  name: 'A',
  air: { hoses: [{ bore: '3/4 in', length: '50 ft' }] },
  locate: { ticket: { starts: '2026-11-25T07:00' } },
}

describe('reading a place of a crossing file', () => {
  test('follows keys and places of lists', () => {
    expect(valueAt(CROSSING, 'air.hoses.0.bore')).toBe('3/4 in')
    expect(textAt(CROSSING, 'air.hoses.1.bore')).toBe('')
    expect(listAt(CROSSING, 'air.hoses')).toHaveLength(1)
    expect(listAt(CROSSING, 'name')).toEqual([])
  })

  test('shows numbers and choices as their text', () => {
    expect(textAt({ sptN: 9 }, 'sptN')).toBe('9')
    expect(textAt({ lubricator: false }, 'lubricator')).toBe('false')
  })
})

describe('changing a place of a crossing file', () => {
  test('leaves the file it was made from as it was', () => {
    const changed = withValue(CROSSING, 'air.hoses.0.bore', '1 in')
    expect(textAt(changed, 'air.hoses.0.bore')).toBe('1 in')
    expect(textAt(changed, 'air.hoses.0.length')).toBe('50 ft')
    expect(textAt(CROSSING, 'air.hoses.0.bore')).toBe('3/4 in')
  })

  test('makes what is missing on the way, lists where a place is named', () => {
    expect(withValue({}, 'air.hoses.0.bore', '1 in')).toEqual({ air: { hoses: [{ bore: '1 in' }] } })
  })

  test('a key keeps its place, so that a saved file differs only where it was changed', () => {
    expect(Object.keys(withValue(CROSSING, 'name', 'B'))).toEqual(['name', 'air', 'locate'])
  })

  test('takes out what is emptied, and what means something by being there goes with its last value', () => {
    expect(withValue(CROSSING, 'locate.ticket.starts', undefined)).toEqual({ name: 'A', air: CROSSING.air })
  })

  test('an emptied place of a position stays, for the second number is not the first', () => {
    const changed = withValue({ line: { launch: [-78.1, 38.2] } }, 'line.launch.0', undefined)
    expect(changed).toEqual({ line: { launch: ['', 38.2] } })
  })

  test('a later place leaves no hole before it', () => {
    expect(withValue({ line: { launch: [] } }, 'line.launch.1', 38.2)).toEqual({
      line: { launch: ['', 38.2] },
    })
  })
})
