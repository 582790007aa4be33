import { crc32 } from 'node:zlib'

/** Pictures of 12 × 8 points a browser drew, without a word beside the picture, and means to hang words on them. */

export const PLAIN = {
  'image/jpeg': Buffer.from(
    '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAAIAAwDASIAAhEBAxEB/8QAFgABAQEAAAAAAAAAAAAAAAAAAAEE/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/EABUBAQEAAAAAAAAAAAAAAAAAAAIF/8QAHBEAAQMFAAAAAAAAAAAAAAAAAAKBsQEEBTM0/9oADAMBAAIRAxEAPwDAgDeb1NBXx/Ol5qf/2Q==',
    'base64',
  ),
  'image/png': Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAwAAAAICAYAAADN5B7xAAAAKUlEQVR4AeyQoQ0AAAjDyF7aT1y7n4ZFEfA0qawpmHJXpCcRRz7YDCsAAAD//3eMKrsAAAAGSURBVAMA+0YbKXiWWEwAAAAASUVORK5CYII=',
    'base64',
  ),
  'image/webp': Buffer.from(
    'UklGRkQAAABXRUJQVlA4IDgAAAAwAgCdASoMAAgAAsBMJagCdHIAq//cAAcGAAD+6NcJ/f9fuxjmGKQPV/RfE9/7DX36L4nvcwAAAA==',
    'base64',
  ),
} as const
export type PhotoType = keyof typeof PLAIN
export const PHOTO_TYPES = Object.keys(PLAIN) as readonly PhotoType[]

const JPEG_START = 2
const PNG_HEADER_END = 33
const RIFF_HEADER = 12

export function jpegSegment(marker: number, body: Buffer): Buffer {
  const head = Buffer.from([0xff, marker, 0, 0])
  head.writeUInt16BE(body.length + 2, 2)
  return Buffer.concat([head, body])
}

export function pngChunk(type: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), body])
  const around = Buffer.alloc(8)
  around.writeUInt32BE(body.length, 0)
  around.writeUInt32BE(crc32(named), 4)
  return Buffer.concat([around.subarray(0, 4), named, around.subarray(4)])
}

export function riffChunk(type: string, body: Buffer): Buffer {
  const head = Buffer.alloc(8)
  head.write(type, 'latin1')
  head.writeUInt32LE(body.length, 4)
  return Buffer.concat([head, body, Buffer.alloc(body.length % 2)])
}

/** Segments or chunks put in where such things stand: after the start of a JPEG, the header of a PNG, all of a WebP. */
export function photoWith(type: PhotoType, ...parts: readonly Buffer[]): Buffer {
  const plain: Buffer = PLAIN[type]
  if (type === 'image/webp') {
    const extended = Buffer.from([0x0c, 0, 0, 0, 11, 0, 0, 7, 0, 0])
    const chunks = [riffChunk('VP8X', extended), plain.subarray(RIFF_HEADER), ...parts]
    return riffChunk('RIFF', Buffer.concat([Buffer.from('WEBP'), ...chunks]))
  }
  const at = type === 'image/jpeg' ? JPEG_START : PNG_HEADER_END
  return Buffer.concat([plain.subarray(0, at), ...parts, plain.subarray(at)])
}

/** A camera's notes as TIFF: the way up, and a place. `order` is its two ways to write a number. */
export function cameraNotes(orientation: number, place: string, order: 'II' | 'MM'): Buffer {
  const notes = Buffer.alloc(38 + place.length)
  const write16 = (value: number, at: number) =>
    order === 'II' ? notes.writeUInt16LE(value, at) : notes.writeUInt16BE(value, at)
  const write32 = (value: number, at: number) =>
    order === 'II' ? notes.writeUInt32LE(value, at) : notes.writeUInt32BE(value, at)
  notes.write(order, 0, 'latin1')
  write16(42, 2)
  write32(8, 4)
  write16(2, 8)
  for (const [at, tag, kind, value] of [
    [10, 0x0112, 3, orientation],
    [22, 0x8825, 4, 38],
  ] as const) {
    write16(tag, at)
    write16(kind, at + 2)
    write32(1, at + 4)
    if (kind === 3) write16(value, at + 8)
    else write32(value, at + 8)
  }
  notes.write(place, 38, 'latin1')
  return notes
}

const XMP = 'http://ns.adobe.com/xap/1.0/\0'

/** As a telephone sends it: notes, a place in three hands, a comment, an unheard-of part. */
export function photoOfATelephone(type: PhotoType, orientation: number, place: string): Buffer {
  const notes = cameraNotes(orientation, place, 'II')
  const xmp = `<x:xmpmeta xmlns:x="adobe:ns:meta/">${place}</x:xmpmeta>`
  const comment = Buffer.from(`by Ada at ${place}`)
  switch (type) {
    case 'image/jpeg':
      return photoWith(
        type,
        jpegSegment(0xe1, Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), notes])),
        jpegSegment(0xe1, Buffer.from(`${XMP}${xmp}`, 'latin1')),
        jpegSegment(0xed, comment),
        jpegSegment(0xfe, comment),
      )
    case 'image/png':
      return photoWith(
        type,
        pngChunk('eXIf', notes),
        pngChunk('iTXt', Buffer.from(`XML:com.adobe.xmp\0\0\0\0\0${xmp}`)),
        pngChunk('tEXt', Buffer.concat([Buffer.from('Comment\0'), comment])),
        pngChunk('prIv', comment),
      )
    case 'image/webp':
      return photoWith(
        type,
        riffChunk('EXIF', notes),
        riffChunk('XMP ', Buffer.from(xmp)),
        riffChunk('PRIV', comment),
      )
  }
}
