import type { PipeFamily } from '../../tables/pipe-system.ts'

/** A nominal size as people write it, taken apart. */
export type SizeWords = {
  /** The size alone, lower case, one spelling. */
  readonly plain: string
  /** Its number, when it is one: 1.25 for 1-1/4. */
  readonly value: number | null
  readonly unit: 'in' | 'mm' | 'dn' | null
  readonly family: PipeFamily | null
  /** Wall named in the same breath: '3/4 K', '2 in DR 11'. */
  readonly wall: string | null
  /** Wall given as a thickness, the European way: '32 x 3.0'. */
  readonly thickness: number | null
}

/** Longer than any size anybody writes; what is longer is not read to its end. */
const LONGEST = 64

const FRACTIONS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

const WALL = /\b(?:s?dr|sch(?:edule)?\.?|type|class)[\s-]*[a-z\d.]+$|(?<=[\s"\d])(?:emt|imc|rmc|[klm])$/
const FAMILY = /(?:^|[\s"])(ips|cts|dips)$/
const MATERIAL = /\b(?:hdpe|mdpe|pe|pex|pvc|poly|copper|cu|steel|gas|duct|conduit|tubing|tube|pipe)\b\.?/g

/** One spelling for marks, fractions and blanks. */
function oneSpelling(text: string): string {
  return text
    .slice(0, LONGEST)
    .toLowerCase()
    .replace(/[¼½¾⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign] ?? ''}`)
    .replace(/[“”″‶]|''/g, '"')
    .replace(/[‐‑–—]/g, '-')
    .replace(/[ø⌀,]/g, ' ')
    .replace(MATERIAL, ' ')
    .replace(/\s+/g, ' ')
    .trim()
}

/** A number written plainly, as a fraction or as a whole and a fraction. */
export function readNominal(text: string): number | null {
  const mixed = /^(?:(\d{1,3})[\s-]+)?(\d{1,3})\/(\d{1,3})$/.exec(text)
  if (mixed) {
    const bottom = Number(mixed[3])
    return bottom === 0 ? null : Number(mixed[1] ?? 0) + Number(mixed[2]) / bottom
  }
  return /^(?:\d{1,4}(?:\.\d{1,4})?|\.\d{1,4})$/.test(text) ? Number(text) : null
}

export function readPipeSize(text: string): SizeWords {
  let rest = oneSpelling(text)
  const wall = WALL.exec(rest)?.[0] ?? null
  if (wall !== null) rest = rest.slice(0, rest.length - wall.length).trim()
  const family = FAMILY.exec(rest)?.[1] ?? null
  if (family !== null) rest = rest.slice(0, rest.length - family.length).trim()
  const pair = /^(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*(mm)?$/.exec(rest)
  if (pair) {
    const value = readNominal(pair[1] ?? '')
    return {
      plain: pair[1] ?? '',
      value,
      unit: 'mm',
      family: asFamily(family),
      wall,
      thickness: Number(pair[2]),
    }
  }
  let unit: SizeWords['unit'] = null
  const tail = /\s*-?\s*(mm|inches|inch|in\.?|")$/.exec(rest)
  if (tail) {
    unit = tail[1] === 'mm' ? 'mm' : 'in'
    rest = rest.slice(0, rest.length - tail[0].length).trim()
  } else if (/^dn\s*\d/.test(rest)) {
    unit = 'dn'
    rest = rest.slice(2).trim()
  }
  return { plain: rest, value: readNominal(rest), unit, family: asFamily(family), wall, thickness: null }
}

const asFamily = (text: string | null): PipeFamily | null =>
  text === 'ips' || text === 'cts' || text === 'dips' ? text : null

/** One name for one wall: 'SDR 9', 'dr-9' → 'r9'; 'Schedule 40' → 'sch40'; 'type K' → 'k'; a bare '9' stays '9'. */
export function plainWall(text: string): string {
  return text
    .slice(0, LONGEST)
    .toLowerCase()
    .replace(/[\s\-_."]+(?=[a-z\d])|["]/g, (mark) => (mark === '.' ? '.' : ''))
    .replace(/^type|^class/, '')
    .replace(/^s?dr/, 'r')
    .replace(/^sch(?:edule)?\.?/, 'sch')
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '')
    .trim()
}
