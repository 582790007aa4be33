import type { Candidate, IssueCode } from '../core/outcome.ts'
import { inchesText } from './feet-and-inches.ts'
import type { PipeSystem } from './pipe-words.ts'
import { familyOf, pipeWords, unknownPipeWord } from './pipe-words.ts'
import { LONGEST_QUANTITY, plainNotation, shortened } from './plain-notation.ts'
import type { PlacelessIssue } from './quantity-refusals.ts'
import { NUMBER, readNumber } from './read-number.ts'
import { unitOfKind } from './unit-spelling.ts'
import { toSi } from './units.ts'

export type PipeNote = {
  readonly ok: true
  /** How many of them: `2 x 1-1/4 SDR 13.5 duct`. */
  readonly count: number
  /** Null when only an outside diameter is known. */
  readonly system: PipeSystem | null
  /** As the system's table prints it: `3/4`, `1-1/4`, `32`, `14/10`. */
  readonly size: string | null
  readonly dimensionRatio: number | null
  /** K, L, M, SCH40, EMT …: walls that go by a name. */
  readonly wall: string | null
  readonly outsideDiameterM: number | null
}
type Refused = { readonly ok: false; readonly issue: PlacelessIssue }

const ACCEPTED = '3/4 K, 1 in CTS SDR 9, 2 in IPS DR 11, 4 in SDR 35, 32 mm PE, 1.315 in OD'
const COUNT = /^(\d{1,2})\s*(?:x|×|@|ea\.?)\s+(?=\S)/i
const SIZE = new RegExp(`^([Øø⌀∅]?)\\s*(${NUMBER})\\s*(mm|"|inch(?:es)?|in\\b\\.?)?\\s*(.*)$`, 'i')
const MICRODUCT = /^(\d{1,2}\/\d{1,2}(?:\.\d)?)\s*(?:mm\s*)?(?:micro-?\s?duct|md)\b/i
/** What comes with the pipe is not the pipe: `w/ pull tape`. It still tells a duct from a water line. */
const COMES_WITH = /\s(?:w\/|with)\s.*$/i
/** Nobody bores for a 16 in pipe with these tools; a bare number from here on is millimetres, but is asked. */
const LEAST_BARE_MM = 16

function refusePipe(code: IssueCode, given: unknown, candidates: readonly Candidate[] = []): Refused {
  const unknown = code === 'not-a-quantity' ? { values: { why: 'pipe' } } : {}
  const issue = { code, given: shortened(given), accepted: ACCEPTED, ...unknown }
  return { ok: false, issue: candidates.length > 0 ? { ...issue, candidates } : issue }
}

const ask = (given: unknown, ...values: readonly (readonly [value: string, means: string])[]): Refused =>
  refusePipe(
    'ask',
    given,
    values.map(([value, means]) => ({ value, means })),
  )

/**
 * Reads a pipe as it is noted on a job sheet: `3/4 K`, `1" CTS`, `2" IPS DR-11`, `4" SDR35`, `1" poly IPS`, `32 mm PE`.
 * A note that fits two families of outside diameter is asked about: a 1 in CTS and a 1 in IPS pipe differ by 5 mm.
 */
export function parsePipeNote(text: unknown): PipeNote | Refused {
  if (typeof text !== 'string') return refusePipe('wrong-type', text)
  if (text.length > LONGEST_QUANTITY) return refusePipe('too-long', text)
  const counted = plainNotation(text)
  const [whole = '', times = '1'] = COUNT.exec(counted) ?? []
  const plain = counted.slice(whole.length)
  const count = Number(times)
  if (count === 0) return refusePipe('not-a-quantity', text)
  const comma = /\d\s*,\s*\d/.test(plain)
  if (comma)
    return refusePipe('comma-in-number', text, [
      { value: plain.replace(/\s*,\s*/, '.'), means: 'decimal point' },
    ])
  const micro = MICRODUCT.exec(plain)
  if (micro) {
    const [, size = ''] = micro
    return {
      ok: true,
      count,
      ...blank,
      system: 'microduct',
      size,
      outsideDiameterM: toMetres(Number.parseFloat(size), 'mm'),
    }
  }
  return readSized(plain, count, text)
}

const blank = { system: null, size: null, dimensionRatio: null, wall: null, outsideDiameterM: null } as const

function toMetres(value: number, id: 'mm' | 'in'): number | null {
  const unit = unitOfKind(id, 'diameter')
  return unit ? toSi(value, unit) : null
}

function readSized(plain: string, count: number, given: string): PipeNote | Refused {
  const [, mark = '', number = '', unitText = '', tail = ''] = SIZE.exec(plain) ?? []
  const read = readNumber(number)
  if (read.read === 'unclear-fraction') {
    const rest = plain.slice(plain.indexOf(number) + number.length)
    return ask(given, [read.mixed + rest, read.mixed], [read.decimal + rest, number])
  }
  if (read.read === 'not-finite') return refusePipe('not-finite', given)
  if (read.read !== 'number' || read.value === 0) return refusePipe('not-a-quantity', given)
  const rest = tail.trim()
  const unknown = unknownPipeWord(rest.replace(COMES_WITH, ''))
  if (unknown !== null) return refusePipe('not-a-quantity', given)
  const bare = unitText === ''
  if (bare && (mark !== '' || read.value >= LEAST_BARE_MM)) {
    return ask(given, [`${number} mm ${rest}`.trim(), 'mm'], [`${number} in ${rest}`.trim(), 'in'])
  }
  const metric = /^mm$/i.test(unitText)
  const words = pipeWords(rest)
  if (words.outside || mark !== '' || (metric && rest === '')) {
    const outsideDiameterM = toMetres(read.value, metric ? 'mm' : 'in')
    return { ok: true, count, ...blank, dimensionRatio: words.ratio, wall: words.wall, outsideDiameterM }
  }
  const family = familyOf(words, metric)
  if (family.length !== 1) {
    const size = `${number} ${metric ? 'mm' : 'in'}`
    const kept = rest === '' ? '' : ` ${rest}`
    return ask(given, ...family.map(({ say, system }) => [`${size}${kept} ${say}`, system] as const))
  }
  const [only] = family
  if (!only) return refusePipe('not-a-quantity', given)
  return {
    ok: true,
    count,
    system: only.system,
    size: metric ? String(read.value) : tableSize(read.value, only.system, words),
    dimensionRatio: words.ratio,
    wall: words.wall,
    outsideDiameterM: metric ? toMetres(read.value, 'mm') : null,
  }
}

/** 1.25 → `1-1/4`, the way the tables print it; gas tables print the family with the size. */
function tableSize(inches: number, system: PipeSystem, words: ReturnType<typeof pipeWords>): string {
  const eighths = inches * 8
  const size = Number.isInteger(eighths) ? inchesText(inches, 8).replace(' in', '') : String(inches)
  if (system !== 'pe-gas') return size
  if (words.cts) return `${size} CTS`
  return words.ratio === null ? `${size} IPS` : `${size} IPS SDR${words.ratio}`
}

/** Blows for the last foot of a split spoon; three counts are the three half feet, of which the last two count (ASTM D1586). */
export function parseSptNote(text: unknown): { readonly ok: true; readonly sptN: number } | Refused {
  const accepted = 'N=9, 3-4-5'
  const refusal = (code: IssueCode, candidates?: readonly Candidate[]): Refused => ({
    ok: false,
    issue: { code, given: shortened(text), accepted, ...(candidates ? { candidates } : {}) },
  })
  if (typeof text === 'number')
    return Number.isFinite(text) && text >= 0 ? { ok: true, sptN: text } : refusal('not-finite')
  if (typeof text !== 'string') return refusal('wrong-type')
  if (text.length > LONGEST_QUANTITY) return refusal('too-long')
  const plain = plainNotation(text)
  const single =
    /^(?:n(?:60)?\s*[=:]?\s*)?(\d{1,3}(?:\.\d+)?)\s*(?:bpf|blows?(?:\s*(?:\/|per)\s*(?:ft|foot|'))?)?$/i.exec(
      plain,
    )
  if (single) return { ok: true, sptN: Number(single[1]) }
  const halves = /^(\d{1,2})\s*[-/]\s*(\d{1,2})\s*[-/]\s*(\d{1,2})$/.exec(plain)
  if (halves) return { ok: true, sptN: Number(halves[2]) + Number(halves[3]) }
  /** `50/3"`: the spoon stopped; a count for the full foot does not exist, only that it is 50 or more. */
  if (/^\d{2,3}\s*\/\s*\d{1,2}(?:\.\d+)?\s*(?:"|in|mm|cm)$/i.test(plain))
    return refusal('ask', [{ value: 'N=50', means: 'refusal' }])
  return refusal('not-a-quantity')
}
