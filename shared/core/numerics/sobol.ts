/**
 * Sobol points in 12 dimensions, scrambled by seed.
 * Direction numbers: Joe & Kuo, SIAM J. Sci. Comput. 30 (2008) 2635, first twelve dimensions.
 * Scramble: nested uniform (Owen) scramble by hashing bits from the top down (Laine–Karras form, constants of
 * Vegdahl's revision, from memory): a seed permutes the intervals, so the points stay a net.
 * Only the bare sequence is checked against published points; the scramble is checked by its properties.
 */
export const SOBOL_DIMENSIONS = 12

/** Degree and coefficients of each primitive polynomial, and the first direction numbers. */
const PRIMITIVES: readonly { readonly a: number; readonly m: readonly number[] }[] = [
  { a: 0, m: [1] },
  { a: 1, m: [1, 3] },
  { a: 1, m: [1, 3, 1] },
  { a: 2, m: [1, 1, 1] },
  { a: 1, m: [1, 1, 3, 3] },
  { a: 4, m: [1, 3, 5, 13] },
  { a: 2, m: [1, 1, 5, 5, 17] },
  { a: 4, m: [1, 1, 5, 5, 5] },
  { a: 7, m: [1, 1, 7, 11, 19] },
  { a: 11, m: [1, 1, 5, 1, 1] },
  { a: 13, m: [1, 1, 1, 3, 11] },
]
const BITS = 32

function directions(dimension: number): Uint32Array {
  const v = new Uint32Array(BITS)
  const primitive = dimension === 0 ? undefined : PRIMITIVES[dimension - 1]
  if (!primitive) {
    for (let bit = 0; bit < BITS; bit++) v[bit] = 2 ** (31 - bit)
    return v
  }
  const degree = primitive.m.length
  for (let bit = 0; bit < BITS; bit++) {
    if (bit < degree) {
      v[bit] = (primitive.m[bit] ?? 0) * 2 ** (31 - bit)
      continue
    }
    const back = v[bit - degree] ?? 0
    let value = back ^ (back >>> degree)
    for (let k = 1; k < degree; k++) {
      if ((primitive.a >>> (degree - 1 - k)) & 1) value ^= v[bit - k] ?? 0
    }
    v[bit] = value >>> 0
  }
  return v
}

const DIRECTIONS = Array.from({ length: SOBOL_DIMENSIONS }, (_, dimension) => directions(dimension))

function reverseBits(x: number): number {
  let r = x
  r = ((r >>> 1) & 0x55555555) | ((r & 0x55555555) << 1)
  r = ((r >>> 2) & 0x33333333) | ((r & 0x33333333) << 2)
  r = ((r >>> 4) & 0x0f0f0f0f) | ((r & 0x0f0f0f0f) << 4)
  r = ((r >>> 8) & 0x00ff00ff) | ((r & 0x00ff00ff) << 8)
  return ((r >>> 16) | (r << 16)) >>> 0
}

/** Mixes a seed and a dimension into 32 well-stirred bits (Murmur3's finaliser). */
function mix(seed: number, dimension: number): number {
  let h = (seed ^ Math.imul(dimension + 1, 0x9e3779b9)) >>> 0
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35)
  return (h ^ (h >>> 16)) >>> 0
}

function owenScramble(x: number, key: number): number {
  let r = reverseBits(x)
  r ^= Math.imul(r, 0x3d20adea)
  r = (r + key) >>> 0
  r = Math.imul(r, (key >>> 16) | 1)
  r ^= Math.imul(r, 0x05526c56)
  r ^= Math.imul(r, 0x53a22864)
  return reverseBits(r >>> 0)
}

/** The bare sequence, point by point, Gray-code order, first point zero; 32-bit integers. */
export function sobolIntegers(count: number, dimension: number): Uint32Array {
  const v = DIRECTIONS[dimension]
  const points = new Uint32Array(count)
  if (!v) return points
  let x = 0
  for (let index = 1; index < count; index++) {
    let bit = 0
    for (let low = index - 1; low & 1; low >>>= 1) bit++
    x ^= v[bit] ?? 0
    points[index] = x >>> 0
  }
  return points
}

/** One dimension of scrambled points, each strictly between 0 and 1. */
export function scrambledSobol(count: number, dimension: number, seed: number): Float64Array {
  const integers = sobolIntegers(count, dimension)
  const key = mix(seed >>> 0, dimension)
  const points = new Float64Array(count)
  for (let index = 0; index < count; index++) {
    points[index] = (owenScramble(integers[index] ?? 0, key) + 0.5) / 2 ** 32
  }
  return points
}
