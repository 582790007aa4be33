import '../support/one-seed.ts'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { renewalCalendar } from '../../shared/text/renewal-calendar.ts'

const entry = (summary: string) => ({ uid: 'a@b', at: '2026-03-24T23:59', summary, description: summary })
const STAMP = '20261124T091000Z'
const unfolded = (text: string) => text.replace(/\r\n /g, '')
const lineOf = (text: string, name: string) =>
  new RegExp(`^${name}:(.*)$`, 'm').exec(unfolded(text).replaceAll('\r', ''))?.[1] ?? ''
/** As a reader of the standard reads it back. */
const read = (value: string) =>
  value.replace(/\\(n|.)/g, (_whole, sign: string) => (sign === 'n' ? '\n' : sign))

describe('a calendar of renewals', () => {
  test('has what the standard asks of it, with a floating time', () => {
    const text = renewalCalendar([entry('Renew')], STAMP)
    expect(text.startsWith('BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:')).toBe(true)
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true)
    expect(lineOf(text, 'DTSTART')).toBe('20260324T235900')
    expect(lineOf(text, 'DTSTAMP')).toBe(STAMP)
  })

  test('reads back whatever was written, in lines of at most 75 octets', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (words) => {
        // Lone halves of a character and controls cannot stand in a text file.
        // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is left out
        const plain = words.replace(/[\u0000-\u0009\u000b-\u001f\u007f]/g, '').replace(/\p{Surrogate}/gu, '')
        const text = renewalCalendar([entry(plain)], STAMP)
        for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
        expect(read(lineOf(text, 'SUMMARY'))).toBe(plain)
      }),
    )
  })

  test('a name that looks like a line of the format stays a name', () => {
    const text = renewalCalendar([entry('x\r\nEND:VEVENT\r\nBEGIN:VEVENT; a, b \\')], STAMP)
    expect(
      unfolded(text)
        .split('\r\n')
        .filter((line) => line === 'BEGIN:VEVENT').length,
    ).toBe(1)
  })
})
