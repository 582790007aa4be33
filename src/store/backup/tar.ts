import { PreconditionError } from '../../../shared/core/outcome.ts'

/** The plain form of tar archives (POSIX.1-1988, ustar): what any unpacking program opens. */

const BLOCK = 512
const LONGEST_NAME = 100
/** Where each field begins, and how long it is. */
const NAME = [0, LONGEST_NAME] as const
const SIZE = [124, 12] as const
const CHECKSUM = [148, 8] as const
const TYPE = 156
const MAGIC = [257, 6] as const
const REGULAR_FILE = '0'
/** Eleven octal digits. */
const LARGEST_SIZE = 8 ** 11 - 1

const octal = (value: number, digits: number): string => value.toString(8).padStart(digits, '0')

function checksumOf(header: Buffer): number {
  const [from, length] = CHECKSUM
  let sum = 0
  for (const [at, byte] of header.entries()) sum += at >= from && at < from + length ? 0x20 : byte
  return sum
}

export function tarHeader(name: string, size: number): Buffer {
  if (name.length > LONGEST_NAME || size > LARGEST_SIZE) throw new PreconditionError(`no tar entry: ${name}`)
  const header = Buffer.alloc(BLOCK)
  header.write(name, NAME[0], 'ascii')
  header.write('0000644\0' + '0000000\0' + '0000000\0', LONGEST_NAME, 'ascii')
  header.write(`${octal(size, 11)}\0${octal(0, 11)}\0`, SIZE[0], 'ascii')
  header.write(REGULAR_FILE, TYPE, 'ascii')
  header.write('ustar\u000000', MAGIC[0], 'ascii')
  header.write(`${octal(checksumOf(header), 6)}\0 `, CHECKSUM[0], 'ascii')
  return header
}

/** Zeros that fill an entry up to whole blocks. */
export const tarPadding = (size: number): Buffer => Buffer.alloc((BLOCK - (size % BLOCK)) % BLOCK)

export const TAR_END = Buffer.alloc(2 * BLOCK)

/** The archive is not one, or ends too early. */
export class TarError extends Error {
  override readonly name = 'TarError'
}

function entryOf(header: Buffer): { readonly name: string; readonly size: number } {
  const text = ([from, length]: readonly [number, number]) =>
    header
      .toString('latin1', from, from + length)
      .replace(/\0.*$/s, '')
      .trim()
  const isWhole = text(MAGIC) === 'ustar' && Number.parseInt(text(CHECKSUM), 8) === checksumOf(header)
  if (!isWhole || header.toString('latin1', TYPE, TYPE + 1) !== REGULAR_FILE)
    throw new TarError('not a tar entry')
  const size = text(SIZE)
  if (!/^[0-7]{1,11}$/.test(size)) throw new TarError('an entry without a size')
  return { name: text(NAME), size: Number.parseInt(size, 8) }
}

/** Hands out a stream of bytes in pieces as long as asked for. */
class Pieces {
  readonly #chunks: AsyncIterator<Buffer>
  #held = Buffer.alloc(0)
  constructor(chunks: AsyncIterable<Buffer>) {
    this.#chunks = chunks[Symbol.asyncIterator]()
  }

  /** At least one byte and at most so many; empty at the end. */
  async some(most: number): Promise<Buffer> {
    if (this.#held.length === 0) {
      const next = await this.#chunks.next()
      if (next.done === true) return this.#held
      this.#held = Buffer.from(next.value)
    }
    const piece = this.#held.subarray(0, most)
    this.#held = this.#held.subarray(piece.length)
    return piece
  }

  async *exactly(size: number): AsyncGenerator<Buffer> {
    for (let left = size; left > 0; ) {
      const piece = await this.some(left)
      if (piece.length === 0) throw new TarError('ends too early')
      left -= piece.length
      yield piece
    }
  }

  async block(): Promise<Buffer> {
    const pieces: Buffer[] = []
    for await (const piece of this.exactly(BLOCK)) pieces.push(piece)
    return Buffer.concat(pieces)
  }
}

export type TarEntry = {
  readonly name: string
  readonly size: number
  /** To be read to its end before the next entry is asked for. */
  readonly body: AsyncIterable<Buffer>
}

/** The entries of an archive in their order; throws a TarError when it is not whole to its last byte. */
export async function* readTar(chunks: AsyncIterable<Buffer>): AsyncGenerator<TarEntry> {
  const pieces = new Pieces(chunks)
  for (;;) {
    const header = await pieces.block()
    if (header.every((byte) => byte === 0)) break
    const { name, size } = entryOf(header)
    yield { name, size, body: pieces.exactly(size) }
    for await (const piece of pieces.exactly(tarPadding(size).length)) {
      if (piece.some((byte) => byte !== 0)) throw new TarError('something between two entries')
    }
  }
  const last = await pieces.block()
  const rest = await pieces.some(1)
  if (last.some((byte) => byte !== 0) || rest.length > 0) throw new TarError('something after the end')
}
