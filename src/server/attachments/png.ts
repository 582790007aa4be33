import { crc32 } from 'node:zlib'
import { BadFile, ByteReader, type TakenApart } from './byte-reader.ts'
import { orientationIn, orientationNotes } from './orientation.ts'

export const PNG_START = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1')

/** Chunks of the W3C's PNG specification that make the picture and its colours. */
const PICTURE = ['IHDR', 'PLTE', 'IDAT', 'IEND']
const COLOURS = ['tRNS', 'gAMA', 'cHRM', 'sRGB', 'iCCP', 'cICP', 'sBIT', 'bKGD', 'pHYs']
const MOVING = ['acTL', 'fcTL', 'fdAT']

const chunkOf = (type: string, body: Buffer): Buffer => {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), body])
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)]
  length.writeUInt32BE(body.length)
  sum.writeUInt32BE(crc32(named))
  return Buffer.concat([length, named, sum])
}

function takeChunk(reader: ByteReader): { readonly type: string; readonly body: Buffer } {
  const length = reader.big32()
  const named = reader.take(4 + length)
  if (reader.big32() !== crc32(named)) throw new BadFile('damaged', 'a checksum')
  return { type: named.toString('latin1', 0, 4), body: named.subarray(4) }
}

/** Small first letter: a reader may leave it out. */
const isOptional = (type: string): boolean => /^[a-z][A-Za-z]{3}$/.test(type)

/** Keeps what the picture is made of and its colours; texts, times, places and anything unknown go. */
export function takePngApart(file: Buffer): TakenApart {
  const reader = new ByteReader(file)
  if (!reader.take(PNG_START.length).equals(PNG_START)) throw new BadFile('damaged', 'no start')
  const header = takeChunk(reader)
  if (header.type !== 'IHDR' || header.body.length !== 13) throw new BadFile('damaged', 'no header')
  const kept: Buffer[] = []
  const dropped: Buffer[] = []
  let notes: Buffer | null = null
  let hasPicture = false
  for (let chunk = takeChunk(reader); chunk.type !== 'IEND'; chunk = takeChunk(reader)) {
    const { type, body } = chunk
    if (MOVING.includes(type)) throw new BadFile('moving', type)
    if (type === 'IHDR') throw new BadFile('damaged', 'two headers')
    if (type === 'IDAT') hasPicture = true
    if (type === 'eXIf') notes = orientationNotes(orientationIn(body))
    if (PICTURE.includes(type) || COLOURS.includes(type)) kept.push(chunkOf(type, body))
    else if (isOptional(type)) dropped.push(body)
    else throw new BadFile('damaged', type)
  }
  if (!hasPicture) throw new BadFile('damaged', 'no picture')
  if (reader.left > 0) dropped.push(reader.rest())
  const exif = notes === null ? [] : [chunkOf('eXIf', notes)]
  return {
    picture: Buffer.concat([
      PNG_START,
      chunkOf('IHDR', header.body),
      ...exif,
      ...kept,
      chunkOf('IEND', Buffer.alloc(0)),
    ]),
    dropped,
    widthPx: header.body.readUInt32BE(0),
    heightPx: header.body.readUInt32BE(4),
  }
}
