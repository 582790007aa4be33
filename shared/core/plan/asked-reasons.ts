import { readCivil } from '../digsafe/civil.ts'
import { jurisdictionOf } from '../digsafe/jurisdiction-of.ts'
import { PRIVATE_KINDS, type PrivateKind } from './asked-input.ts'
import type { CrossingInput, LocateInput, UtilityKind } from './crossing-input.ts'
import type { ReleaseReason } from './plan.ts'
import { reason } from './reason.ts'

/** Answers that are answers; anything else, or none, is silence. */
const ANSWERED = ['marked', 'clear', 'unmarked', 'not-present', 'exposed', 'met-on-site']

/** Under which kinds a private line may stand in the list of lines crossed. */
const LISTED_AS: Readonly<Record<PrivateKind, readonly UtilityKind[]>> = {
  lateral: ['sewer'],
  septic: ['septic', 'sewer'],
  propane: ['propane', 'gas'],
  lighting: ['lighting', 'electric'],
  irrigation: ['irrigation', 'water'],
  pool: ['water', 'electric', 'gas', 'other'],
  well: ['water'],
  'outbuilding-power': ['electric'],
  'dog-fence': ['telecom', 'electric', 'other'],
  drains: ['storm', 'sewer', 'other'],
}

/**
 * Asked by name. Once anybody began to ask, what is not known is a fact that is missing and holds: to turn a yes into
 * "don't know" is no way out. Where nobody has asked at all it is advice on paper, and the site list holds it.
 */
function privateReasons({ privateLines, utilities }: CrossingInput): ReleaseReason[] {
  if (privateLines === null) return [reason('advice', 'private-not-asked')]
  const { answers, by, on } = privateLines
  const found: ReleaseReason[] = []
  for (const kind of PRIVATE_KINDS) {
    const answer = answers[kind]
    const isListed = (utilities ?? []).some((each) => LISTED_AS[kind].includes(each.kind))
    if (answer === 'yes' && !isListed) found.push(reason('rule', 'private-not-listed', { private: kind }))
  }
  const open = PRIVATE_KINDS.filter((kind) => answers[kind] === null || answers[kind] === 'unknown')
  if (open.length > 0) found.push(reason('missing', 'private-not-known', { private: open.join(',') }))
  if (by === null || on === null) found.push(reason('advice', 'private-not-signed'))
  return found
}

/**
 * A place whose rules we do not have, or that nobody named. Where somebody has put a name to having read them, the
 * printed ticket does the rest.
 */
function placeReasons({ jurisdiction, rulesRead }: LocateInput): ReleaseReason[] {
  if (jurisdiction === null) return [reason('missing', 'jurisdiction-not-given')]
  if (jurisdictionOf(jurisdiction) !== null || rulesRead !== null) return []
  return [reason('missing', 'jurisdiction-not-known', { given: jurisdiction })]
}

function ticketReasons({ ticket, called }: LocateInput): ReleaseReason[] {
  if (ticket === null) return [reason('missing', 'no-ticket')]
  const { starts, expires } = ticket
  const [startsMin, expiresMin] = [readCivil(starts), readCivil(expires)]
  const isBackwards = startsMin === null || expiresMin === null || expiresMin <= startsMin
  const found = isBackwards ? [reason('rule', 'ticket-dates', { starts, expires })] : []
  const calledMin = called === null ? null : readCivil(called)
  if (called !== null && calledMin !== null && startsMin !== null && startsMin < calledMin) {
    found.push(reason('rule', 'ticket-before-call', { starts, called }))
  }
  return found
}

function answerReasons({ responses }: LocateInput): ReleaseReason[] {
  if (responses.length === 0) return [reason('missing', 'no-owner-answered')]
  return responses.flatMap(({ owner, answer, found }) => {
    if (answer === '') return [reason('rule', 'owner-not-answered', { owner })]
    if (!ANSWERED.includes(answer.toLowerCase())) return [reason('rule', 'owner-silent', { owner, answer })]
    const isWrong = found === 'nothing' ? answer.toLowerCase() === 'marked' : found === 'differs'
    return isWrong ? [reason('rule', 'answer-not-on-ground', { owner, answer })] : []
  })
}

/** An owner listed here who has not answered, a line nobody owns, a mark where nothing is listed. */
function ownerReasons({ responses }: LocateInput, utilities: CrossingInput['utilities']): ReleaseReason[] {
  const found: ReleaseReason[] = []
  const answeredBy = new Set(responses.map((each) => each.owner.trim().toLowerCase()))
  ;(utilities ?? []).forEach((u, index) => {
    const values = { line: index + 1, kind: u.kind, owner: u.owner ?? '' }
    if (u.private) return
    // Whose answer would it be? Leaving the owner out is no way around one who is silent.
    if (u.owner === null) found.push(reason('missing', 'line-owner-not-given', values))
    else if (!answeredBy.has(u.owner.trim().toLowerCase())) {
      found.push(reason('missing', 'listed-owner-silent', values))
    }
  })
  const marked = responses.filter((each) => each.answer.toLowerCase() === 'marked')
  if (utilities !== null && utilities.length === 0 && marked.length > 0) {
    found.push(
      reason('rule', 'marked-but-none-listed', { owner: marked.map((each) => each.owner).join(', ') }),
    )
  }
  return found
}

/** A line said to be exposed with nobody's name or photo to it. */
function exposedReasons({ utilities }: CrossingInput): ReleaseReason[] {
  return (utilities ?? []).flatMap((u, index) => {
    if (u.evidence !== 'exposed') return []
    const isWhole =
      u.exposed !== null && u.exposed.by !== null && u.exposed.on !== null && u.exposed.photo !== null
    return isWhole ? [] : [reason('advice', 'exposed-without-record', { line: index + 1, kind: u.kind })]
  })
}

/** What was asked of whom, and what they said. Silence is hold. */
export function askedReasons(input: CrossingInput): ReleaseReason[] {
  const { utilities, utilitiesAsked, locate } = input
  const found: ReleaseReason[] = []
  if (utilities === null) found.push(reason('missing', 'lines-not-asked'))
  else if (utilities.length === 0 && utilitiesAsked === null)
    found.push(reason('missing', 'none-here-not-signed'))
  found.push(...exposedReasons(input), ...privateReasons(input))
  if (locate === null) return [...found, reason('missing', 'locate-not-asked')]
  return [
    ...found,
    ...placeReasons(locate),
    ...ticketReasons(locate),
    ...answerReasons(locate),
    ...ownerReasons(locate, utilities),
  ]
}
