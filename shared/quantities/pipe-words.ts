/** Families of outside diameter and wall a pipe table is kept for. */
export type PipeSystem =
  | 'hdpe-ips'
  | 'pe-gas'
  | 'pe-cts'
  | 'pex-cts'
  | 'copper-b88'
  | 'copper-metric'
  | 'pe-iso'
  | 'pvc-pressure'
  | 'pvc-sewer'
  | 'steel'
  | 'pvc-conduit'
  | 'hdpe-conduit'
  | 'metal-conduit'
  | 'microduct'
  | 'duct-metric'
  | 'pe-dips'

/** What the words after the size say, without yet deciding for a family. */
export type PipeWords = {
  readonly ratio: number | null
  readonly wall: string | null
  readonly cts: boolean
  readonly ips: boolean
  readonly dips: boolean
  readonly copper: boolean
  readonly pe: boolean
  readonly pex: boolean
  readonly pvc: boolean
  readonly steel: boolean
  readonly gas: boolean
  readonly duct: boolean
  readonly sewer: boolean
  readonly outside: boolean
}

type Family = { readonly system: PipeSystem; readonly say: string }

const RATIO = /\b(?:sdr|dr)\s*-?\s*(\d{1,2}(?:\.\d{1,2})?)\b/i
const SCHEDULE = /\bsch(?:edule|d)?\.?\s*-?\s*(40|80)\b/i
const METAL = /\b(emt|imc|rmc|grc|rigid)\b/i
const COPPER_WALL = /\b(?:type\s*)?([klm])\b/i
/** Metric copper walls are A, B and C; a lone letter counts only beside the word copper. */
const METRIC_COPPER_WALL = /\b(?:type\s*)?([abc])\b/i
const KNOWN =
  /^(?:sdr|dr|type|k|l|m|a|b|c|cu|copper|soft|hard|cts|ips|dips|pe|hdpe|mdpe|poly|polyethylene|pex|pvc|steel|iron|black|galv|gas|water|sewer|svc|service|duct|conduit|innerduct|iso|od|sch|schd|schedule|emt|imc|rmc|grc|rigid|pipe|tube|tubing|line|sleeve|coil|roll|\d+(?:\.\d+)?|sdr\d+(?:\.\d+)?|dr\d+(?:\.\d+)?|sch\d+)$/i

/** The first word no pipe note has; null when all are known. */
export function unknownPipeWord(rest: string): string | null {
  const words = rest.split(/[\s,;()/-]+/).map((each) => each.replace(/\.$/, ''))
  return words.find((each) => each !== '' && !KNOWN.test(each)) ?? null
}

export function pipeWords(rest: string): PipeWords {
  const has = (pattern: RegExp) => pattern.test(rest)
  const ratio = RATIO.exec(rest)
  const copper = has(/\b(?:cu|copper)\b/i)
  return {
    ratio: ratio ? Number(ratio[1]) : null,
    wall: wallOf(rest, copper),
    cts: has(/\bcts\b/i),
    ips: has(/\bips\b/i),
    dips: has(/\bdips\b/i),
    copper: copper || has(COPPER_WALL),
    pe: has(/\b(?:pe|hdpe|mdpe|poly|polyethylene)\b/i),
    pex: has(/\bpex\b/i),
    pvc: has(/\bpvc\b/i),
    steel: has(/\b(?:steel|iron|black|galv)\b/i),
    gas: has(/\bgas\b/i),
    duct: has(/\b(?:duct|conduit|innerduct|pull\s*tape)\b/i),
    sewer: has(/\bsewer\b/i),
    outside: has(/\bod\b/i),
  }
}

function wallOf(rest: string, copper: boolean): string | null {
  const schedule = SCHEDULE.exec(rest)
  if (schedule) return `SCH${schedule[1]}`
  const metal = METAL.exec(rest)?.[1]?.toUpperCase()
  if (metal) return metal === 'GRC' || metal === 'RIGID' ? 'RMC' : metal
  const letter = COPPER_WALL.exec(rest) ?? (copper ? METRIC_COPPER_WALL.exec(rest) : null)
  return letter?.[1]?.toUpperCase() ?? null
}

const one = (system: PipeSystem, say = ''): readonly Family[] => [{ system, say }]

/** Every family the words fit, with what to add to mean it; one only when nothing is left to ask. */
export function familyOf(words: PipeWords, metric: boolean): readonly Family[] {
  return metric ? metricFamily(words) : (marked(words) ?? unmarked(words))
}

function metricFamily(words: PipeWords): readonly Family[] {
  if (words.copper) return one('copper-metric')
  if (words.duct) return one('duct-metric')
  if (words.pe || words.ratio !== null) return one('pe-iso')
  return [
    { system: 'pe-iso', say: 'PE' },
    { system: 'copper-metric', say: 'copper' },
    { system: 'duct-metric', say: 'duct' },
  ]
}

/** The words name the family. */
function marked(words: PipeWords): readonly Family[] | null {
  if (words.copper) return one('copper-b88')
  if (words.pex) return one('pex-cts')
  if (words.dips) return one('pe-dips')
  if (words.gas && (words.cts || words.ips)) return one('pe-gas')
  if (words.cts) return one('pe-cts')
  if (words.wall === 'EMT' || words.wall === 'IMC' || words.wall === 'RMC') return one('metal-conduit')
  if (words.steel) return one('steel')
  if (words.ratio === 35 || (words.pvc && words.sewer)) return one('pvc-sewer')
  if (words.pvc && words.duct) return one('pvc-conduit')
  if (words.pvc && (words.wall !== null || words.ratio !== null)) return one('pvc-pressure')
  if (words.duct && words.wall === null) return one('hdpe-conduit')
  if (words.ips) return one('hdpe-ips')
  return null
}

/** The family is open: what the note could mean. */
function unmarked(words: PipeWords): readonly Family[] {
  if (words.gas)
    return [
      { system: 'pe-gas', say: 'CTS' },
      { system: 'pe-gas', say: 'IPS' },
    ]
  if (words.pvc) {
    return [
      { system: 'pvc-pressure', say: 'SCH 40' },
      { system: 'pvc-sewer', say: 'SDR 35' },
      { system: 'pvc-conduit', say: 'conduit' },
    ]
  }
  if (words.wall !== null) {
    return [
      { system: 'pvc-pressure', say: 'PVC' },
      { system: 'steel', say: 'steel' },
      { system: 'pvc-conduit', say: 'PVC conduit' },
    ]
  }
  const polyethylene: readonly Family[] = [
    { system: 'pe-cts', say: 'CTS' },
    { system: 'hdpe-ips', say: 'IPS' },
  ]
  if (words.pe) return polyethylene
  if (words.ratio !== null) return [...polyethylene, { system: 'hdpe-conduit', say: 'conduit' }]
  return [...polyethylene, { system: 'copper-b88', say: 'K' }]
}
