import { BadFile, ByteReader, type TakenApart } from './byte-reader.ts'
import { orientationIn, orientationNotes } from './orientation.ts'

/** Markers of ITU-T T.81, table B.1. */
const SOI = Buffer.from([0xff, 0xd8])
const EOI = Buffer.from([0xff, 0xd9])
const SOS = 0xda
const APP0 = 0xe0
const APP1 = 0xe1
const APP2 = 0xe2
const APP14 = 0xee
/** Frames every browser shows: baseline, extended, progressive. */
const FRAMES = [0xc0, 0xc1, 0xc2]
/** Tables a picture is decoded with: Huffman, quantisation, restart interval. */
const TABLES = [0xc4, 0xdb, 0xdd]

const segment = (marker: number, body: Buffer): Buffer => {
  const head = Buffer.from([0xff, marker, 0, 0])
  head.writeUInt16BE(body.length + 2, 2)
  return Buffer.concat([head, body])
}

const startsWith = (body: Buffer, text: string): boolean => body.toString('latin1', 0, text.length) === text

/** Any number of 0xff may stand before a marker. */
function nextMarker(reader: ByteReader): number {
  if (reader.byte() !== 0xff) throw new BadFile('damaged', 'no marker')
  for (;;) {
    const marker = reader.byte()
    if (marker !== 0xff) return marker
  }
}

/** The coded picture after a scan's header: to the first marker that is no restart and no stuffed zero. */
function takeScan(reader: ByteReader): Buffer {
  for (let from = 0; ; ) {
    const at = reader.distanceTo(0xff, from)
    const next = reader.ahead(at + 1)
    const isInside = next === 0 || (next >= 0xd0 && next <= 0xd7)
    if (!isInside) return reader.take(at)
    from = at + 2
  }
}

/** JFIF says how dense the points are; the small picture it may carry is left out. */
const jfifOf = (body: Buffer): Buffer => Buffer.concat([body.subarray(0, 12), Buffer.alloc(2)])

type Parts = {
  jfif: Buffer | null
  orientation: number
  frame: Buffer | null
  hasScan: boolean
  readonly kept: Buffer[]
  readonly dropped: Buffer[]
}

function sort(parts: Parts, marker: number, body: Buffer): void {
  if (marker === APP0 && startsWith(body, 'JFIF\0') && body.length >= 14) {
    parts.jfif = jfifOf(body)
  } else if (FRAMES.includes(marker)) {
    if (parts.frame !== null || body.length < 6) throw new BadFile('damaged', 'two frames')
    parts.frame = body
    parts.kept.push(segment(marker, body))
  } else if (TABLES.includes(marker)) {
    parts.kept.push(segment(marker, body))
  } else if (marker === APP14 && startsWith(body, 'Adobe') && body.length >= 12) {
    // Says which way the colours are mixed.
    parts.kept.push(segment(marker, body.subarray(0, 12)))
  } else if (marker === APP2 && startsWith(body, 'ICC_PROFILE\0')) {
    parts.kept.push(segment(marker, body))
  } else if ((marker >= APP0 && marker <= 0xef) || marker === 0xfe) {
    if (marker === APP1 && startsWith(body, 'Exif\0\0')) parts.orientation = orientationIn(body.subarray(6))
    parts.dropped.push(body)
  } else {
    throw new BadFile('damaged', `marker ${marker}`)
  }
}

/** Keeps what the picture is made of and its colours; a camera's notes, places, comments and small pictures go. */
export function takeJpegApart(file: Buffer): TakenApart {
  const reader = new ByteReader(file)
  if (!reader.take(2).equals(SOI)) throw new BadFile('damaged', 'no start')
  const parts: Parts = { jfif: null, orientation: 1, frame: null, hasScan: false, kept: [], dropped: [] }
  for (let marker = nextMarker(reader); marker !== EOI[1]; marker = nextMarker(reader)) {
    const isBare = marker === 0 || marker === 1 || (marker >= 0xd0 && marker <= 0xd8)
    if (isBare) throw new BadFile('damaged', `marker ${marker}`)
    const body = reader.take(reader.big16() - 2)
    if (marker === SOS) {
      if (parts.frame === null) throw new BadFile('damaged', 'a scan without a frame')
      parts.kept.push(segment(SOS, body), takeScan(reader))
      parts.hasScan = true
    } else {
      sort(parts, marker, body)
    }
  }
  if (parts.frame === null || !parts.hasScan) throw new BadFile('damaged', 'no picture')
  // Telephones hang a short film or a second picture behind the first.
  if (reader.left > 0) parts.dropped.push(reader.rest())
  const notes = orientationNotes(parts.orientation)
  const exif =
    notes === null ? [] : [segment(APP1, Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), notes]))]
  const jfif = parts.jfif === null ? [] : [segment(APP0, parts.jfif)]
  return {
    picture: Buffer.concat([SOI, ...jfif, ...exif, ...parts.kept, EOI]),
    dropped: parts.dropped,
    widthPx: parts.frame.readUInt16BE(3),
    heightPx: parts.frame.readUInt16BE(1),
  }
}
