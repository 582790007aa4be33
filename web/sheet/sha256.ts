/**
 * SHA-256 of FIPS 180-4, at once: a page about to be printed cannot wait, and the browser's own is asleep on a plain
 * address of the office network.
 */

const WORD_BITS = 32
const BLOCK_BYTES = 64
const ROUNDS = 64
/** The length stands in the last eight bytes of the last block. */
const LENGTH_BYTES = 8

/** First 32 bits of the fraction of a root. */
const fractionBits = (value: number): number => ((value - Math.floor(value)) * 2 ** WORD_BITS) | 0

function firstPrimes(count: number): readonly number[] {
  const primes: number[] = []
  for (let each = 2; primes.length < count; each++) {
    if (primes.every((prime) => each % prime !== 0)) primes.push(each)
  }
  return primes
}

const PRIMES = firstPrimes(ROUNDS)
const CONSTANTS = Int32Array.from(PRIMES, (prime) => fractionBits(Math.cbrt(prime)))
const START = Int32Array.from(PRIMES.slice(0, 8), (prime) => fractionBits(Math.sqrt(prime)))

const turned = (word: number, by: number): number => (word >>> by) | (word << (WORD_BITS - by))

function padded(bytes: Uint8Array): DataView {
  const length = Math.ceil((bytes.length + 1 + LENGTH_BYTES) / BLOCK_BYTES) * BLOCK_BYTES
  const whole = new Uint8Array(length)
  whole.set(bytes)
  whole[bytes.length] = 0x80
  const view = new DataView(whole.buffer)
  view.setBigUint64(length - LENGTH_BYTES, BigInt(bytes.length) * 8n)
  return view
}

function schedule(view: DataView, at: number): Int32Array {
  const w = new Int32Array(ROUNDS)
  const word = (index: number): number => w[index] ?? 0
  for (let index = 0; index < ROUNDS; index++) {
    if (index < 16) {
      w[index] = view.getInt32(at + index * 4)
      continue
    }
    const early = word(index - 15)
    const late = word(index - 2)
    const small0 = turned(early, 7) ^ turned(early, 18) ^ (early >>> 3)
    const small1 = turned(late, 17) ^ turned(late, 19) ^ (late >>> 10)
    w[index] = (word(index - 16) + small0 + word(index - 7) + small1) | 0
  }
  return w
}

function mixed(state: Int32Array, w: Int32Array): Int32Array {
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = state
  for (let round = 0; round < ROUNDS; round++) {
    const big1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)
    const choice = (e & f) ^ (~e & g)
    const first = (h + big1 + choice + (CONSTANTS[round] ?? 0) + (w[round] ?? 0)) | 0
    const big0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)
    const majority = (a & b) ^ (a & c) ^ (b & c)
    h = g
    g = f
    f = e
    e = (d + first) | 0
    d = c
    c = b
    b = a
    a = (first + ((big0 + majority) | 0)) | 0
  }
  return Int32Array.from([a, b, c, d, e, f, g, h], (word, index) => (word + (state[index] ?? 0)) | 0)
}

/** The hash of bytes, in small hexadecimal letters. */
export function sha256OfBytes(bytes: Uint8Array): string {
  const view = padded(bytes)
  let state: Int32Array = START
  for (let at = 0; at < view.byteLength; at += BLOCK_BYTES) state = mixed(state, schedule(view, at))
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('')
}

/** The hash of a text's UTF-8 bytes, in small hexadecimal letters. */
export const sha256 = (text: string): string => sha256OfBytes(new TextEncoder().encode(text))
