import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { orientationIn } from '../../src/server/attachments/orientation.ts'
import { whatIsKept } from '../../src/server/attachments/what-is-kept.ts'
import {
  cameraNotes,
  jpegSegment,
  PHOTO_TYPES,
  type PhotoType,
  PLAIN,
  photoOfATelephone,
  photoWith,
  pngChunk,
  riffChunk,
} from '../support/photos.ts'

const PLACE = 'N 38.0293 W 78.4767'

function keptOf(type: string, file: Buffer): Buffer {
  const kept = whatIsKept(type, file)
  if (!kept.ok) throw new Error(kept.fault)
  return kept.bytes
}
const faultOf = (type: string, file: Buffer): string => {
  const kept = whatIsKept(type, file)
  return kept.ok ? 'kept' : kept.fault
}

/** An empty archive: its list of contents, with a comment as long as said. */
const zipEnd = (comment: string): Buffer => {
  const end = Buffer.alloc(22)
  end.write('PK\x05\x06', 'latin1')
  end.writeUInt16LE(comment.length, 20)
  return Buffer.concat([end, Buffer.from(comment)])
}

describe.each(PHOTO_TYPES)('a picture as %s', (type) => {
  test('without a word beside it is kept as it is', () => {
    expect(keptOf(type, PLAIN[type])).toEqual(PLAIN[type])
  })

  test('of a telephone loses place, comment and notes, and stays the right way up', () => {
    const sent = photoOfATelephone(type, 6, PLACE)
    expect(sent.toString('latin1')).toContain(PLACE)
    const kept = keptOf(type, sent)
    expect(kept.toString('latin1')).not.toMatch(/38\.0293|Ada|xmp/)
    const notesAt = kept.indexOf('MM\0*', 0, 'latin1')
    expect(orientationIn(kept.subarray(notesAt))).toBe(6)
    expect(kept.length).toBeLessThan(PLAIN[type].length + 70)
    expect(keptOf(type, kept)).toEqual(kept)
  })

  test('the right way up already is kept without any notes', () => {
    const kept = keptOf(type, photoOfATelephone(type, 1, PLACE))
    expect(kept.toString('latin1')).not.toMatch(/Exif|EXIF|eXIf|MM\0/)
  })

  test('loses what a telephone hangs behind it', () => {
    const film = Buffer.from('\0\0\0\x18ftypmp42 a short film')
    expect(keptOf(type, Buffer.concat([PLAIN[type], film]))).toEqual(PLAIN[type])
  })

  test('cut off anywhere is refused', () => {
    const whole = photoOfATelephone(type, 6, PLACE)
    for (let length = 0; length < whole.length; length++) {
      expect(faultOf(type, whole.subarray(0, length)), String(length)).toMatch(/damaged|another-type/)
    }
  })

  test('with any one bit turned is refused, or kept without its place', () => {
    const whole = photoOfATelephone(type, 6, PLACE)
    for (let bit = 0; bit < whole.length * 8; bit++) {
      const bytes = Buffer.from(whole)
      bytes.writeUInt8(bytes.readUInt8(bit >> 3) ^ (1 << (bit & 7)), bit >> 3)
      const kept = whatIsKept(type, bytes)
      if (kept.ok) expect(kept.bytes.toString('latin1'), String(bit)).not.toMatch(/38\.0|Ada/)
    }
  })

  test('followed or made up by anything at all is never our failure', () => {
    const bytes = fc.uint8Array({ maxLength: 400 }).map((each) => Buffer.from(each))
    const spliced = fc
      .tuple(fc.nat(PLAIN[type].length), fc.nat(40), bytes)
      .map(([at, without, put]) =>
        Buffer.concat([PLAIN[type].subarray(0, at), put, PLAIN[type].subarray(at + without)]),
      )
    fc.assert(
      fc.property(spliced, (file) => {
        const kept = whatIsKept(type, file)
        if (kept.ok) expect(keptOf(type, kept.bytes)).toEqual(kept.bytes)
      }),
      { numRuns: 500 },
    )
  })

  test.each([
    ['an archive behind it', (plain: Buffer) => Buffer.concat([plain, zipEnd('')])],
    ['an archive with a comment behind it', (plain: Buffer) => Buffer.concat([plain, zipEnd('a comment')])],
    [
      'an archive that begins behind it',
      (plain: Buffer) => Buffer.concat([plain, Buffer.from('PK\x03\x04')]),
    ],
    ['a page behind it', (plain: Buffer) => Buffer.concat([plain, Buffer.from('<script>alert(1)</script>')])],
    ['a drawing behind it', (plain: Buffer) => Buffer.concat([plain, Buffer.from('<svg onload="x()">')])],
    ['a paper behind it', (plain: Buffer) => Buffer.concat([plain, Buffer.from('%PDF-1.4 …%%EOF')])],
    ['a program behind it', (plain: Buffer) => Buffer.concat([plain, Buffer.from('\x7fELF\x02')])],
  ])('with %s is refused', (_what, made) => {
    expect(faultOf(type, made(PLAIN[type]))).toBe('two-kinds')
  })

  test('named another kind is refused', () => {
    for (const other of [...PHOTO_TYPES, 'application/pdf', 'image/gif', 'image/svg+xml', 'text/html', '']) {
      if (other !== type) expect(faultOf(other, PLAIN[type])).toBe('another-type')
    }
  })
})

/** Where words can be put without harm to the picture. */
const WITH_WORDS: Readonly<Record<PhotoType, (words: Buffer) => Buffer>> = {
  'image/jpeg': (words) => photoWith('image/jpeg', jpegSegment(0xfe, words)),
  'image/png': (words) => photoWith('image/png', pngChunk('tEXt', words)),
  'image/webp': (words) => photoWith('image/webp', riffChunk('XMP ', words)),
}

describe('a page hidden in the words of a picture', () => {
  test.each(PHOTO_TYPES)('%s is refused', (type) => {
    for (const words of ['<html><body>', 'x\n<?php echo 1;', '<SCRIPT src=//x>', '%PDF-1.7\n']) {
      expect(faultOf(type, WITH_WORDS[type](Buffer.from(words))), words).toBe('two-kinds')
    }
    expect(faultOf(type, WITH_WORDS[type](Buffer.from('cover < 30 in <b>')))).toBe('kept')
  })

  test('or in its colours is refused', () => {
    const colours = Buffer.from(`ICC_PROFILE\0\x01\x01${'.'.repeat(3000)}<script>alert(1)</script>`, 'latin1')
    expect(faultOf('image/jpeg', photoWith('image/jpeg', jpegSegment(0xe2, colours)))).toBe('two-kinds')
    expect(faultOf('image/webp', photoWith('image/webp', riffChunk('ICCP', colours)))).toBe('two-kinds')
  })
})

describe('too much, or moving', () => {
  const header = (width: number, height: number) => {
    const body = Buffer.from([0, 0, 0, 0, 0, 0, 0, 0, 8, 6, 0, 0, 0])
    body.writeUInt32BE(width, 0)
    body.writeUInt32BE(height, 4)
    return pngChunk('IHDR', body)
  }
  const png = (width: number, height: number) =>
    Buffer.concat([PLAIN['image/png'].subarray(0, 8), header(width, height), PLAIN['image/png'].subarray(33)])

  test('a small file that unfolds into more points than a telephone takes', () => {
    expect(faultOf('image/png', png(20_000, 10_000))).toBe('kept')
    expect(faultOf('image/png', png(20_001, 10_000))).toBe('too-large')
    expect(faultOf('image/png', png(0, 10_000))).toBe('damaged')
  })

  test('a picture that moves', () => {
    expect(faultOf('image/png', photoWith('image/png', pngChunk('acTL', Buffer.alloc(8))))).toBe('moving')
    expect(faultOf('image/webp', photoWith('image/webp', riffChunk('ANIM', Buffer.alloc(6))))).toBe('moving')
  })

  test('a part nobody knows that must not be left out', () => {
    expect(faultOf('image/png', photoWith('image/png', pngChunk('NEWx', Buffer.alloc(1))))).toBe('damaged')
  })
})

describe('a paper', () => {
  const paper = Buffer.from('%PDF-1.7\n1 0 obj <<>> endobj\ntrailer <<>>\n%%EOF\n')

  test('is kept as it is', () => {
    expect(keptOf('application/pdf', paper)).toEqual(paper)
  })

  test('cut off, begun late, or something else as well is refused', () => {
    expect(faultOf('application/pdf', paper.subarray(0, 30))).toBe('damaged')
    expect(faultOf('application/pdf', Buffer.concat([Buffer.from(' '), paper]))).toBe('another-type')
    expect(faultOf('application/pdf', Buffer.concat([paper, zipEnd('%%EOF')]))).toBe('two-kinds')
    expect(faultOf('application/pdf', Buffer.from('%PDF-1.7\n<html>\n%%EOF'))).toBe('two-kinds')
  })
})

describe('the way up', () => {
  test('is read in both ways to write a number', () => {
    for (const order of ['II', 'MM'] as const) {
      for (const way of [1, 3, 6, 8]) expect(orientationIn(cameraNotes(way, PLACE, order))).toBe(way)
      expect(orientationIn(cameraNotes(9, PLACE, order))).toBe(1)
    }
  })

  test('is upright where the notes cannot be read', () => {
    fc.assert(
      fc.property(fc.constantFrom('II*\0', 'MM\0*', ''), fc.uint8Array({ maxLength: 60 }), (start, rest) => {
        const way = orientationIn(Buffer.concat([Buffer.from(start, 'latin1'), rest]))
        expect(way >= 1 && way <= 8).toBe(true)
      }),
    )
  })
})
