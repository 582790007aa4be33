import type { PipeSize, PipeSystem } from '../../tables/pipe-system.ts'
import { PIPE_SYSTEMS } from '../../tables/pipes.ts'
import type { Candidate, Issue, Outcome } from '../outcome.ts'
import { done, refused } from '../outcome.ts'
import type { SizeWords } from './read-pipe-size.ts'
import { plainWall, readNominal, readPipeSize } from './read-pipe-size.ts'

const METRE_PER = { in: 0.0254, mm: 0.001 } as const
const FOOT_M = 0.3048
const KG_PER_M_PER_LB_PER_FT = 0.45359237 / FOOT_M
const SAME = 1e-6
/** Dimension ratios polyethylene is made in; outside them a bare number is a slip. */
const RATIOS = { least: 6, most: 41 } as const

export type FoundPipe = {
  readonly system: PipeSystem
  /** Nominal size as the table prints it. */
  readonly size: string
  /** Name of the wall: 'SDR9', 'SCH40', 'K'. */
  readonly wall: string
  /** Nobody named a wall and the system has several: its usual one was taken. */
  readonly wallAssumed: boolean
  readonly outsideDiameterM: number
  readonly wallM: number
  readonly dimensionRatio: number
  /** Largest thing that goes through the bore: the bell where there is one. */
  readonly largestDiameterM: number
  /** Lengths coils are sold in; empty when not known or not coiled. */
  readonly coilLengthsM: readonly number[]
  /** From the printed weight; null where none is printed. */
  readonly massKgPerM: number | null
}

const isKnown = <Value>(value: Value | null | undefined): value is Value =>
  value !== null && value !== undefined

/** Edits between two short words: to offer the nearest name. */
function editsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1))
    }
    row = next
  }
  return row[b.length] ?? 0
}

/** Other names of the very same pipe. */
const SYSTEM_WORDS: Readonly<Record<string, string>> = {
  'pe-ips': 'hdpe-ips',
  hdpe: 'hdpe-ips',
  poly: 'hdpe-ips',
  copper: 'copper-b88',
  pex: 'pex-cts',
  sdr35: 'pvc-sewer',
  'sdr-35': 'pvc-sewer',
  sewer: 'pvc-sewer',
  duct: 'hdpe-conduit',
  emt: 'metal-conduit',
}

function findSystem(text: string): Outcome<PipeSystem> {
  const wanted = text
    .slice(0, 64)
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-')
  const named = Object.hasOwn(SYSTEM_WORDS, wanted) ? SYSTEM_WORDS[wanted] : wanted
  const system = PIPE_SYSTEMS.find((each) => each.id === named)
  if (system) return done(system)
  const candidates = [...PIPE_SYSTEMS]
    .sort((a, b) => editsBetween(wanted, a.id) - editsBetween(wanted, b.id))
    .slice(0, 3)
    .map((each) => ({ value: each.id, means: each.name }))
  return refused({ path: 'system', code: 'unknown-choice', given: text, candidates })
}

const odOf = (size: PipeSize, unit: PipeSystem['unit']): string => `${size.od} ${unit}`

function sizeIssue(system: PipeSystem, given: string, words: SizeWords, code: Issue['code']): Issue {
  const wanted = words.value
  const near = [...system.sizes]
  if (wanted !== null) {
    const inSystemUnit = words.unit !== null && words.unit !== 'dn' && words.unit !== system.unit
    const scale = inSystemUnit ? (words.unit === 'mm' ? 1 / 25.4 : 25.4) : 1
    const gap = (size: PipeSize) => Math.abs((inSystemUnit ? size.od : nominal(size)) - wanted * scale)
    near.sort((a, b) => gap(a) - gap(b))
  }
  const candidates: readonly Candidate[] = near
    .slice(0, wanted === null ? 8 : 3)
    .map((size) => ({ value: size.size, means: odOf(size, system.unit) }))
  return { path: 'size', code, given, candidates }
}

/** '1-1/4 IPS' → 1.25; '14/10' → 14: what the size is called by. */
function nominal(size: PipeSize): number {
  const [first = ''] = size.size.split(' ')
  const outside = size.od
  const value = readNominal(first)
  return value !== null && value < outside * 2 && value > outside / 2 ? value : outside
}

function matches(system: PipeSystem, size: PipeSize, words: SizeWords): boolean {
  const family = size.family ?? system.family
  if (words.family !== null && words.family !== family) return false
  const thickness = words.thickness
  if (thickness !== null && !Object.values(size.walls).some((wall) => Math.abs(wall - thickness) < SAME))
    return false
  if (size.size.toLowerCase() === words.plain) return true
  if (words.value === null) return false
  if (words.unit === 'dn') return size.dn === words.value
  if (words.unit !== null && words.unit !== system.unit) return false
  return Math.abs(nominal(size) - words.value) < SAME
}

function findSize(system: PipeSystem, text: string, words: SizeWords): Outcome<PipeSize> {
  const exact = system.sizes.filter(
    (size) => size.size.toLowerCase() === words.plain && matches(system, size, words),
  )
  const found = exact.length > 0 ? exact : system.sizes.filter((size) => matches(system, size, words))
  const [only, second] = found
  if (only && !second) return done(only)
  if (only) {
    const candidates = found.map((size) => ({ value: size.size, means: odOf(size, system.unit) }))
    return refused({ path: 'size', code: 'ask', given: text, candidates })
  }
  // '11/4' is 1-1/4 to some and 2.75 to others.
  const run = /^(\d)(\d\/\d{1,2})$/.exec(words.plain)
  const apart = run ? system.sizes.find((size) => size.size === `${run[1]}-${run[2]}`) : undefined
  if (apart) {
    const candidates = [{ value: apart.size, means: odOf(apart, system.unit) }]
    return refused({ path: 'size', code: 'ask', given: text, candidates })
  }
  return refused(sizeIssue(system, text, words, 'unknown-choice'))
}

type Wall = { readonly name: string; readonly thickness: number; readonly assumed: boolean }

function findWall(
  system: PipeSystem,
  size: PipeSize,
  text: string | null,
  thickness: number | null,
): Outcome<Wall> {
  const walls = Object.entries(size.walls)
  if (text === null) {
    const measured = walls.find(([, wall]) => thickness !== null && Math.abs(wall - thickness) < SAME)
    if (measured) return done({ name: measured[0], thickness: measured[1], assumed: false })
    const usual = walls.find(([name]) => name === system.usualWall) ?? walls[0]
    if (usual) return done({ name: usual[0], thickness: usual[1], assumed: walls.length > 1 })
  }
  const wanted = plainWall(text ?? '')
  const tries = /^[\d.]+$/.test(wanted) ? [wanted, `r${wanted}`, `sch${wanted}`] : [wanted]
  for (const each of tries) {
    const hit = walls.find(([name]) => plainWall(name) === each)
    if (hit) return done({ name: hit[0], thickness: hit[1], assumed: false })
  }
  const ratio = readNominal(wanted.replace(/^r/, ''))
  const floor = system.ratioWallFloor
  if (isKnown(ratio) && isKnown(floor) && ratio >= RATIOS.least && ratio <= RATIOS.most) {
    const printed = Math.round((size.od / ratio) * 1000) / 1000
    return done({ name: `DR${ratio}`, thickness: Math.max(floor, printed), assumed: false })
  }
  return refused(wallIssue(system, size, text ?? ''))
}

/** A plain number is a ratio and is answered with ratios; anything else was meant as a wall. */
function wallIssue(system: PipeSystem, size: PipeSize, given: string): Issue {
  const candidates = Object.entries(size.walls).map(([name, wall]) => ({
    value: name,
    means: `${wall} ${system.unit}`,
  }))
  const ratios = candidates.flatMap(({ value, means }) =>
    /^S?DR[\d.]+$/.test(value) ? [{ value: value.replace(/^S?DR/, ''), means }] : [],
  )
  if (/^[\d.]+$/.test(given) && ratios.length > 0) {
    return { path: 'sdr', code: 'unknown-choice', given, candidates: ratios }
  }
  return { path: 'wall', code: 'unknown-choice', given, candidates }
}

/**
 * A pipe by system, nominal size and wall as people write them ('pe-cts', '1"', 'SDR 9'). Whatever is given, it answers:
 * the pipe in SI, or what was not known with the nearest that are. `wall` null or empty takes the system's usual wall.
 */
export function findPipe(
  systemText: string,
  sizeText: string,
  wallText: string | null = null,
): Outcome<FoundPipe> {
  const system = findSystem(systemText)
  if (!system.ok) return system
  const words = readPipeSize(sizeText)
  const size = findSize(system.value, sizeText, words)
  if (!size.ok) return size
  const named = wallText === null || wallText.trim() === '' ? words.wall : wallText
  const wall = findWall(system.value, size.value, named, words.thickness)
  if (!wall.ok) return wall
  const metre = METRE_PER[system.value.unit]
  const outside = size.value.odByWall?.[wall.value.name] ?? size.value.od
  const lbPerFt = size.value.lbPerFt?.[wall.value.name]
  return done({
    system: system.value,
    size: size.value.size,
    wall: wall.value.name,
    wallAssumed: wall.value.assumed,
    outsideDiameterM: outside * metre,
    wallM: wall.value.thickness * metre,
    dimensionRatio: outside / wall.value.thickness,
    largestDiameterM: outside * metre * (system.value.bellFactor ?? 1),
    coilLengthsM: (size.value.coilsFt ?? []).map((feet) => feet * FOOT_M),
    massKgPerM: lbPerFt === undefined ? null : lbPerFt * KG_PER_M_PER_LB_PER_FT,
  })
}
