/** What is wrong with a file that was sent; none of it is ours. */
export type FileFault = 'damaged' | 'two-kinds' | 'too-large' | 'moving'

export class BadFile extends Error {
  override readonly name = 'BadFile'
  readonly fault: FileFault
  constructor(fault: FileFault, what: string) {
    super(`${fault}: ${what}`)
    this.fault = fault
  }
}

/** Reads forward through bytes nobody vouches for: what lies beyond their end is never read. */
export class ByteReader {
  readonly #bytes: Buffer
  #at = 0
  constructor(bytes: Buffer) {
    this.#bytes = bytes
  }

  get left(): number {
    return this.#bytes.length - this.#at
  }

  take(count: number): Buffer {
    if (count < 0 || count > this.left) throw new BadFile('damaged', 'ends too early')
    const taken = this.#bytes.subarray(this.#at, this.#at + count)
    this.#at += count
    return taken
  }

  rest(): Buffer {
    return this.take(this.left)
  }

  /** How far it is to the next byte of this value. */
  distanceTo(value: number, from = 0): number {
    const at = this.#bytes.indexOf(value, this.#at + from)
    if (at < 0) throw new BadFile('damaged', 'has no end')
    return at - this.#at
  }

  /** The byte so far ahead, without taking it. */
  ahead(distance: number): number {
    const value = this.#bytes[this.#at + distance]
    if (value === undefined) throw new BadFile('damaged', 'ends too early')
    return value
  }

  byte(): number {
    return this.take(1).readUInt8()
  }
  big16(): number {
    return this.take(2).readUInt16BE()
  }
  big32(): number {
    return this.take(4).readUInt32BE()
  }
  little32(): number {
    return this.take(4).readUInt32LE()
  }
}

/** A picture taken apart: what makes the picture, and what came along with it. */
export type TakenApart = {
  readonly picture: Buffer
  readonly dropped: readonly Buffer[]
  readonly widthPx: number
  readonly heightPx: number
}
