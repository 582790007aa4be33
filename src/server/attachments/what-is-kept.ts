import { BadFile, type FileFault, type TakenApart } from './byte-reader.ts'
import { takeJpegApart } from './jpeg.ts'
import { PNG_START, takePngApart } from './png.ts'
import { takeWebpApart } from './webp.ts'

/** More than any telephone takes; beyond it a small file may unfold into more than a machine has. */
const MOST_PIXELS = 200_000_000

/** A file that is another kind as well hides it at its start, at its end, or in what belongs to no picture. */
const START_BYTES = 1024
/** As long as the colours may go on, which stand before the picture. */
const START_OF_PICTURE_BYTES = 65_536
const MARKUP = /<(!doctype|html|head|body|script|iframe|svg|\?php)[\s>/]/i
const OTHER_STARTS = ['%PDF-', 'Rar!\x1a\x07', '7z\xbc\xaf\x27\x1c', '\x7fELF', 'PK\x03\x04'].map((text) =>
  Buffer.from(text, 'latin1'),
)
const ZIP_END = Buffer.from('PK\x05\x06', 'latin1')
const ZIP_END_BYTES = 22
const LONGEST_ZIP_COMMENT = 65_535

const hasMarkup = (bytes: Buffer): boolean => MARKUP.test(bytes.toString('latin1'))
const hasOtherStart = (bytes: Buffer): boolean => OTHER_STARTS.some((start) => bytes.includes(start))

/** The list of an archive stands at its end, behind anything, and says how long the comment after it is. */
function endsAsZip(file: Buffer): boolean {
  const earliest = Math.max(0, file.length - ZIP_END_BYTES - LONGEST_ZIP_COMMENT)
  for (let at = file.indexOf(ZIP_END, earliest); at >= 0; at = file.indexOf(ZIP_END, at + 1)) {
    const commentAt = at + ZIP_END_BYTES
    if (commentAt <= file.length && commentAt + file.readUInt16LE(at + 20) === file.length) return true
  }
  return false
}

function requireOneKind(condition: boolean): void {
  if (!condition) throw new BadFile('two-kinds', 'something else as well')
}

function photoWith(takeApart: (file: Buffer) => TakenApart): (file: Buffer) => Buffer {
  return (file) => {
    const { picture, dropped, widthPx, heightPx } = takeApart(file)
    if (widthPx === 0 || heightPx === 0) throw new BadFile('damaged', 'no points')
    if (widthPx * heightPx > MOST_PIXELS) throw new BadFile('too-large', `${widthPx} × ${heightPx}`)
    const start = picture.subarray(0, START_OF_PICTURE_BYTES)
    requireOneKind(!endsAsZip(file) && !endsAsZip(picture))
    requireOneKind(!hasMarkup(start) && !hasOtherStart(start))
    requireOneKind(dropped.every((part) => !hasMarkup(part) && !hasOtherStart(part)))
    return picture
  }
}

/** A paper is kept as it is: its places are what somebody wrote into it. */
function paper(file: Buffer): Buffer {
  const end = file.subarray(Math.max(0, file.length - START_BYTES)).toString('latin1')
  if (!/^%PDF-[12]\.\d/.test(file.toString('latin1', 0, 8)) || !end.includes('%%EOF')) {
    throw new BadFile('damaged', 'no PDF')
  }
  requireOneKind(!endsAsZip(file) && !hasMarkup(file.subarray(0, START_BYTES)))
  return file
}

type Kind = { readonly begins: (file: Buffer) => boolean; readonly keep: (file: Buffer) => Buffer }

/** What is taken, by its media type; how it begins; and what is kept of it. */
const KINDS: Readonly<Record<string, Kind>> = {
  'image/jpeg': {
    begins: (file) => file.subarray(0, 3).equals(Buffer.from([0xff, 0xd8, 0xff])),
    keep: photoWith(takeJpegApart),
  },
  'image/png': {
    begins: (file) => file.subarray(0, PNG_START.length).equals(PNG_START),
    keep: photoWith(takePngApart),
  },
  'image/webp': {
    begins: (file) => /^RIFF[\s\S]{4}WEBP$/.test(file.toString('latin1', 0, 12)),
    keep: photoWith(takeWebpApart),
  },
  'application/pdf': { begins: (file) => file.toString('latin1', 0, 5) === '%PDF-', keep: paper },
}

export const KEPT_TYPES: readonly string[] = Object.keys(KINDS)

export type Kept =
  | { readonly ok: true; readonly bytes: Buffer }
  | { readonly ok: false; readonly fault: FileFault | 'another-type' }

/** What of a file that was sent is kept, by its own first bytes and not by what is said of it. */
export function whatIsKept(mediaType: string, file: Buffer): Kept {
  const kind = Object.hasOwn(KINDS, mediaType) ? KINDS[mediaType] : undefined
  if (kind === undefined || !kind.begins(file)) return { ok: false, fault: 'another-type' }
  try {
    return { ok: true, bytes: kind.keep(file) }
  } catch (error) {
    if (!(error instanceof BadFile)) throw error
    return { ok: false, fault: error.fault }
  }
}
