import type { Standing } from '../../sources/shape.ts'
import type { SourceKey } from '../../sources.ts'
import { DENSITY_BY_N } from '../../tables/ground-families.ts'
import type { StonesWord } from '../../tables/trade-soil-words.ts'
import type { UscsSoil } from '../../tables/uscs-soils.ts'
import { USCS_SOILS } from '../../tables/uscs-soils.ts'
import type { Issue, Outcome } from '../outcome.ts'
import { done, refused } from '../outcome.ts'
import { between } from './between.ts'
import type { DecidedBy, GroundEvidence, Hardness, StateCode } from './ground-evidence.ts'
import { evidenceIssues, hardnesses, scaleOf, stateOfN } from './ground-evidence.ts'
import type { GroundParameters } from './ground-parameters.ts'
import { groundParameters } from './ground-parameters.ts'
import type { GroundRisk } from './ground-risk.ts'
import { groundRisk } from './ground-risk.ts'
import type { SoilPhrase } from './soil-phrase.ts'
import { readSoilPhrase, soilCandidates, stonier } from './soil-phrase.ts'

export type { GroundEvidence } from './ground-evidence.ts'

export type GroundAssumption = {
  readonly name: string
  readonly value: number | string
  readonly standing: Standing
  readonly source: SourceKey
}

/** Everything the plan needs of the ground of one stretch, with what had to be assumed to get there. */
export type GroundState = GroundParameters &
  GroundRisk & {
    readonly uscs: string
    readonly stateCode: StateCode
    /** The blow count that would say the same. */
    readonly equivalentN: number
    readonly decidedBy: DecidedBy
    /** What else was said of the hardness, and the blow count that would say the same. */
    readonly others: readonly { readonly n: number; readonly by: DecidedBy }[]
    readonly assumptions: readonly GroundAssumption[]
  }

type Read = {
  readonly soil: UscsSoil
  readonly phrase: SoilPhrase | null
  readonly stateCode: string | null
  readonly groupFrom: 'uscs' | 'word' | 'measurement'
}

const symbolOf = (text: string): string =>
  text
    .trim()
    .toUpperCase()
    .replace(/\s*[/–—-]\s*/g, '-')
const soilOf = (symbol: string): UscsSoil | undefined => USCS_SOILS.find((each) => each.symbol === symbol)

/** A consistency said by itself: 'firm', 'Medium Stiff', 'very-loose'. */
function readConsistency(text: string): Outcome<string> {
  const phrase = readSoilPhrase(text)
  if (phrase.ok && phrase.value.stateCode !== null) return done(phrase.value.stateCode)
  const accepted =
    'very soft, soft, firm, stiff, very stiff, hard; very loose, loose, medium dense, dense, very dense'
  return refused({ path: 'consistency', code: 'unknown-choice', given: text, accepted })
}

/** The group: as given, or the word's, or the one a lone measurement speaks of. */
function readGroup(
  evidence: GroundEvidence,
  phrase: SoilPhrase | null,
): Outcome<Pick<Read, 'soil' | 'groupFrom'>> {
  if (evidence.uscs !== null) {
    const soil = soilOf(symbolOf(evidence.uscs))
    if (soil) return done({ soil, groupFrom: 'uscs' })
    const candidates = USCS_SOILS.slice()
      .sort((a, b) => alike(b.symbol, evidence.uscs ?? '') - alike(a.symbol, evidence.uscs ?? ''))
      .slice(0, 3)
      .map((each) => ({ value: each.symbol, means: each.name }))
    return refused({ path: 'uscs', code: 'unknown-choice', given: evidence.uscs, candidates })
  }
  const named = phrase?.soil ? soilOf(phrase.soil.uscs) : undefined
  if (named) return done({ soil: named, groupFrom: 'word' })
  const implied =
    evidence.undrainedStrengthPa !== null ||
    evidence.vanePa !== null ||
    evidence.pocketPenetrometerPa !== null
      ? 'CL'
      : evidence.relativeDensity !== null
        ? 'SP'
        : null
  const soil = implied === null ? undefined : soilOf(implied)
  if (soil) return done({ soil, groupFrom: 'measurement' })
  return refused({
    path: 'word',
    code: 'required',
    ...(evidence.word === null ? {} : { given: evidence.word }),
    candidates: soilCandidates('clay'),
  })
}

const alike = (symbol: string, given: string): number =>
  [...given.toUpperCase()].filter((letter) => symbol.includes(letter)).length -
  Math.abs(symbol.length - given.length)

function read(evidence: GroundEvidence): Outcome<Read> {
  const issues: Issue[] = evidenceIssues(evidence)
  const phrase = evidence.word === null ? null : readSoilPhrase(evidence.word)
  if (phrase && !phrase.ok) issues.push(...phrase.issues)
  const consistency = evidence.consistency === null ? null : readConsistency(evidence.consistency)
  if (consistency && !consistency.ok) issues.push(...consistency.issues)
  const said = phrase?.ok ? phrase.value : null
  const group = phrase && !phrase.ok && evidence.uscs === null ? null : readGroup(evidence, said)
  if (group && !group.ok) issues.push(...group.issues)
  if (issues.length > 0 || !group?.ok) return { ok: false, issues }
  const clash = clashOf(evidence, said, group.value.soil)
  if (clash) return refused(clash)
  const stateCode = consistency?.ok ? consistency.value : (said?.stateCode ?? null)
  return done({ ...group.value, phrase: said, stateCode })
}

/** A symbol and a word that name different families of ground: nobody can say which one is meant. */
function clashOf(evidence: GroundEvidence, phrase: SoilPhrase | null, soil: UscsSoil): Issue | null {
  const worded = evidence.uscs !== null && phrase?.soil ? soilOf(phrase.soil.uscs) : undefined
  if (!worded || worded.profile.family === soil.profile.family) return null
  const accepted = 'a word that fits the USCS symbol, or one of the two'
  return { path: 'word', code: 'inputs-conflict', given: `${soil.symbol}, ${evidence.word ?? ''}`, accepted }
}

const assume = (
  name: string,
  value: number | string,
  source: SourceKey,
  standing: Standing,
): GroundAssumption => ({
  name,
  value,
  standing,
  source,
})

function assumptionsOf(
  evidence: GroundEvidence,
  found: Read,
  hard: Hardness,
  stones: StonesWord | null,
  stateCode: StateCode,
): readonly GroundAssumption[] {
  const listed: GroundAssumption[] = []
  const judged = 'our judgement'
  if (found.groupFrom !== 'uscs') {
    listed.push(assume('uscs', found.soil.symbol, 'CommonPractice', 'common practice'))
  }
  if (found.phrase?.layered === true) listed.push(assume('layers', found.phrase.name, 'OurJudgement', judged))
  if (hard.decidedBy === 'word' || hard.decidedBy === 'group') {
    listed.push(assume('state', stateCode, 'SoilRanges', judged))
  } else if (hard.decidedBy === 'consistency' || hard.decidedBy === 'digging' || hard.decidedBy === 'dcp') {
    listed.push(assume('equivalentN', hard.n, 'OurJudgement', judged))
  }
  if (hard.moistureFactor !== undefined && hard.moistureFactor !== 1) {
    listed.push(assume('moistureFactor', hard.moistureFactor, 'OurJudgement', judged))
  }
  if (hard.decidedBy === 'spt' && scaleOf(found.soil) === 'granular') {
    // At 0.6–2 m a raw count reads low; taken as it stands it makes the ground looser, so the reader is told.
    listed.push(assume('sptN', 'N1,60', 'OurJudgement', judged))
    if (found.soil.profile.family === 'sand') {
      listed.push(assume('relativeDensity', between(hard.n, DENSITY_BY_N), 'Em111022504', 'published'))
    }
  }
  if (stones === null) listed.push(assume('stones', 'not said', 'CommonPractice', 'common practice'))
  if (evidence.undrainedStrengthPa !== null && hard.decidedBy !== 'undrained-strength') {
    listed.push(assume('undrainedStrength', 'not used', 'OurJudgement', judged))
  }
  if (evidence.relativeDensity !== null && hard.decidedBy !== 'relative-density') {
    listed.push(assume('relativeDensity', 'not used', 'OurJudgement', judged))
  }
  if (evidence.frictionAngleRad !== null && hard.decidedBy !== 'friction-angle') {
    listed.push(assume('frictionAngle', 'not used', 'OurJudgement', judged))
  }
  return [...listed, ...setAside(evidence, hard)]
}

/** What was said of the hardness and gave way to something more direct: never dropped in silence. */
function setAside(evidence: GroundEvidence, hard: Hardness): readonly GroundAssumption[] {
  const said = [
    ['vane', evidence.vanePa, 'vane'],
    ['pocketPenetrometer', evidence.pocketPenetrometerPa, 'pocket-penetrometer'],
    ['dcp', evidence.dcpMPerBlow, 'dcp'],
    ['sptN', evidence.sptN, 'spt'],
    ['consistency', evidence.consistency, 'consistency'],
    ['dug', evidence.dug, 'digging'],
  ] as const
  return said
    .filter(([, value, decider]) => value !== null && hard.decidedBy !== decider)
    .map(([name]) => assume(name, 'not used', 'OurJudgement', 'our judgement'))
}

/**
 * From words or measurements to the state of the ground. Measured strength goes before pocket penetrometer, cone, SPT, consistency,
 * how the pit dug, and the word's own habit. Between the rows of the tables the values run straight, so that harder evidence never
 * gives softer ground. Refused: unknown words (with the nearest), nothing said, numbers outside what can be.
 */
export function groundState(evidence: GroundEvidence): Outcome<GroundState> {
  const found = read(evidence)
  if (!found.ok) return found
  const { soil, phrase } = found.value
  const [hard, ...others] = hardnesses(evidence, soil, phrase, found.value.stateCode)
  const stones = stonier(evidence.stones, phrase?.stones ?? null)
  const stateCode = stateOfN(hard.n, scaleOf(soil))
  const gravelly = phrase?.soil?.gravelly === true && phrase.soil.uscs === soil.symbol
  return done({
    ...groundParameters(soil, hard, gravelly),
    ...groundRisk({ soil, n: hard.n, stones, phrase, gravelly, evidence }),
    uscs: soil.symbol,
    stateCode,
    equivalentN: hard.n,
    decidedBy: hard.decidedBy,
    others: others.map(({ n, decidedBy }) => ({ n, by: decidedBy })),
    assumptions: assumptionsOf(evidence, found.value, hard, stones, stateCode),
  })
}
