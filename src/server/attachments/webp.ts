import { BadFile, ByteReader, type TakenApart } from './byte-reader.ts'
import { orientationIn, orientationNotes } from './orientation.ts'

/** Chunks of RFC 9649 that make a still picture and its colours. */
const PICTURE = ['VP8 ', 'VP8L', 'ALPH', 'ICCP']
const MOVING = ['ANIM', 'ANMF']
const EXTENDED_BYTES = 10
/** Flags of the extended header that speak of what goes: camera notes and XMP. */
const EXIF_FLAG = 0x08
const XMP_FLAG = 0x04

const chunkOf = (type: string, body: Buffer): Buffer => {
  const head = Buffer.alloc(8)
  head.write(type, 'latin1')
  head.writeUInt32LE(body.length, 4)
  return Buffer.concat([head, body, Buffer.alloc(body.length % 2)])
}

type Size = { readonly widthPx: number; readonly heightPx: number }

/** From the picture's own first bytes: a lossy frame begins as RFC 6386 says, a lossless one with fourteen bits twice. */
function sizeOf(type: string, body: Buffer): Size {
  if (body.length < EXTENDED_BYTES) throw new BadFile('damaged', 'no frame')
  if (type === 'VP8L') {
    if (body.readUInt8(0) !== 0x2f) throw new BadFile('damaged', 'no lossless frame')
    const bits = body.readUInt32LE(1)
    return { widthPx: (bits & 0x3fff) + 1, heightPx: ((bits >>> 14) & 0x3fff) + 1 }
  }
  if (body.readUIntBE(3, 3) !== 0x9d012a) throw new BadFile('damaged', 'no lossy frame')
  return { widthPx: body.readUInt16LE(6) & 0x3fff, heightPx: body.readUInt16LE(8) & 0x3fff }
}

function takeChunk(reader: ByteReader): { readonly type: string; readonly body: Buffer } {
  const type = reader.take(4).toString('latin1')
  const length = reader.little32()
  const body = reader.take(length)
  if (length % 2 === 1) reader.take(1)
  return { type, body }
}

function extendedHeader(header: Buffer, hasNotes: boolean): Buffer {
  if (header.length !== EXTENDED_BYTES) throw new BadFile('damaged', 'an extended header')
  const copy = Buffer.from(header)
  copy.writeUInt8((header.readUInt8(0) & ~(EXIF_FLAG | XMP_FLAG)) | (hasNotes ? EXIF_FLAG : 0), 0)
  return copy
}

/** Notes are read with or without the words JPEG puts before them. */
const notesIn = (body: Buffer): Buffer | null =>
  orientationNotes(orientationIn(body.toString('latin1', 0, 6) === 'Exif\0\0' ? body.subarray(6) : body))

/** Keeps what the picture is made of and its colours; camera notes, XMP and anything unknown go. */
export function takeWebpApart(file: Buffer): TakenApart {
  const outer = new ByteReader(file)
  if (outer.take(4).toString('latin1') !== 'RIFF') throw new BadFile('damaged', 'no start')
  const reader = new ByteReader(outer.take(outer.little32()))
  if (reader.take(4).toString('latin1') !== 'WEBP') throw new BadFile('damaged', 'no start')
  const kept: Buffer[] = []
  const dropped: Buffer[] = []
  let extended: Buffer | null = null
  let notes: Buffer | null = null
  let size: Size | null = null
  while (reader.left > 0) {
    const { type, body } = takeChunk(reader)
    if (MOVING.includes(type)) throw new BadFile('moving', type)
    if (type === 'EXIF') notes = notesIn(body)
    if (type === 'VP8 ' || type === 'VP8L') {
      if (size !== null) throw new BadFile('damaged', 'two pictures')
      size = sizeOf(type, body)
    }
    if (type === 'VP8X') extended = body
    else if (PICTURE.includes(type)) kept.push(chunkOf(type, body))
    else dropped.push(body)
  }
  if (size === null) throw new BadFile('damaged', 'no picture')
  if (outer.left > 0) dropped.push(outer.rest())
  const first = extended === null ? [] : [chunkOf('VP8X', extendedHeader(extended, notes !== null))]
  const last = extended === null || notes === null ? [] : [chunkOf('EXIF', notes)]
  const chunks = Buffer.concat([Buffer.from('WEBP', 'latin1'), ...first, ...kept, ...last])
  return { picture: chunkOf('RIFF', chunks), dropped, ...size }
}
