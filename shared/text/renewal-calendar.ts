/** One entry of a calendar file; a civil minute on the clock of the place, no zone: it stands where the phone is. */
export type CalendarEntry = {
  readonly uid: string
  /** `2026-03-24T23:59` */
  readonly at: string
  readonly summary: string
  readonly description: string
}

/** RFC 5545, 3.3.11: backslash, semicolon and comma are escaped, a line end is written \n; other controls go. */
const escaped = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: exactly these may not stand in a text value
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replace(/\n/g, '\\n')

const MOST_OCTETS = 75

/** Octets of a character in UTF-8. */
function octets(character: string): number {
  const code = character.codePointAt(0) ?? 0
  if (code < 0x80) return 1
  if (code < 0x800) return 2
  return code < 0x10000 ? 3 : 4
}

/** 3.1: a line is at most 75 octets; the rest goes on after a line end and a space, never inside a character. */
function folded(line: string): string {
  const lines: string[] = []
  let current = ''
  let length = 0
  for (const character of line) {
    const more = octets(character)
    if (length + more > MOST_OCTETS) {
      lines.push(current)
      // The space that starts the next line counts.
      current = ' '
      length = 1
    }
    current += character
    length += more
  }
  return [...lines, current].join('\r\n')
}

const floating = (at: string): string => `${at.replace(/[-:]/g, '')}00`

/** A calendar of renewals, RFC 5545; each entry warns a day ahead. `stampUtc` is when it was made: `20261124T091000Z`. */
export function renewalCalendar(entries: readonly CalendarEntry[], stampUtc: string): string {
  const events = entries.flatMap(({ uid, at, summary, description }) => [
    'BEGIN:VEVENT',
    `UID:${escaped(uid)}`,
    `DTSTAMP:${stampUtc}`,
    `DTSTART:${floating(at)}`,
    'DURATION:PT0S',
    `SUMMARY:${escaped(summary)}`,
    `DESCRIPTION:${escaped(description)}`,
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${escaped(summary)}`,
    'TRIGGER:-P1D',
    'END:VALARM',
    'END:VEVENT',
  ])
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Underlane//Locate tickets//EN',
    ...events,
    'END:VCALENDAR',
  ]
  return `${lines.map(folded).join('\r\n')}\r\n`
}
