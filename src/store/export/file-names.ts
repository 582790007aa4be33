/** What a file of an export is called: a person should find it, and no file system should stumble over it. */

const LONGEST_NAME = 60

/** Names Windows keeps for itself, whatever comes after the point. */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)$/

/** Small letters and digits of a name, with the accents taken off. */
function plainName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST_NAME)
    .replace(/^-+|-+$/g, '')
  return plain === '' || RESERVED.test(plain) ? 'unnamed' : plain
}

/** The id makes it the only one, and finds it again. */
export const fileName = (name: string, id: string, extension: string): string =>
  `${plainName(name)}.${id.replace(/[^0-9a-z-]/g, '_')}${extension}`

/** A cell of a table for a spreadsheet: what would begin a formula there begins a text. */
export function csvCell(value: string): string {
  const inert = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value
  return /[",\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert
}
