import { dayOf, MINUTES_PER_DAY } from './civil.ts'
import { maySetAside, pointOfReason } from './release-points.ts'
import {
  RELEASE_POINTS,
  REOPENS_SITE,
  type ReleasePoint,
  type ReopenCause,
  SIGN_ITEMS,
  type SignItem,
  type SignLayer,
} from './sign-off-items.ts'

/** A name put to something on site. Moments are minutes on the clock of the place, as a ticket prints them. */
export type SignOff = {
  readonly layer: SignLayer | 'reopen' | 'after'
  readonly atMinute: number
  readonly by: string
  /** Which bore of the crossing, from one; null: the whole crossing. */
  readonly bore: number | null
  readonly items: readonly string[]
  /** Items a photo is kept of. */
  readonly photos: readonly string[]
  /** The version of the plan that was on the screen. */
  readonly plan: string | null
  readonly watchers: readonly string[]
  readonly why: ReopenCause | null
  readonly setAside: {
    readonly code: string
    /** The line it is about, from one; null for what is about none. */
    readonly line: number | null
    readonly reason: string
    readonly second: string
  } | null
}

/** A rule of the plan that is not met, or a fact that is missing. */
export type PlanHold = {
  readonly code: string
  readonly line: number | null
  readonly kind: string | null
}

export type GateFacts = {
  readonly nowMinute: number
  /** Whoever asks says that they stand there; a file, an office or a script never does. */
  readonly where: 'site' | 'elsewhere'
  /** When this device last had everything the others know; null: never. */
  readonly asOfMinute: number | null
  readonly bore: number
  readonly plan: string
  readonly ticket: { readonly startsMinute: number; readonly expiresMinute: number } | null
  readonly holds: readonly PlanHold[]
  readonly hasLines: boolean
  /** Gravity lines proved another way than by opening them. */
  readonly hasProved: boolean
  readonly watchersNeeded: number
  readonly signOffs: readonly SignOff[]
}

type OpenPoint = {
  readonly code: 'ticket-not-yet' | 'ticket-over' | 'plan-hold' | 'not-signed' | 'no-photo' | 'watchers-short'
  readonly of: string
  readonly line: number | null
  readonly needed: number
  readonly had: number
}

export type GateAnswer = {
  readonly status: 'hold' | 'check' | 'ready'
  /** Why it is not ready though nothing is open: asked from elsewhere, or what is known here is too old. */
  readonly why: 'elsewhere' | 'stale' | null
  /** Last minute it holds; null unless ready. */
  readonly untilMinute: number | null
  readonly points: readonly {
    readonly point: ReleasePoint
    readonly state: 'pass' | 'hold' | 'set-aside'
    readonly open: readonly OpenPoint[]
  }[]
  /** Rules of the plan that belong to none of the points. */
  readonly others: readonly OpenPoint[]
  readonly watchers: { readonly needed: number; readonly named: number }
  readonly setAside: number
  /** The look at what the bore crossed, before gas or service: by whom. */
  readonly after: { readonly by: string; readonly atMinute: number } | null
}

/** A shift. What others have changed since is not known here: the answer drops to check. Our judgement. */
export const STALE_AFTER_MINUTES = 8 * 60
const LEAST_REASON = 8

const plain = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase()
const open = (code: OpenPoint['code'], of: string, change: Partial<OpenPoint> = {}): OpenPoint => ({
  code,
  of,
  line: null,
  needed: 0,
  had: 0,
  ...change,
})

/** The last time a layer was opened again; a signature at that very minute does not count. */
function openedAt(facts: GateFacts, layer: SignLayer): number {
  const causes = facts.signOffs.filter(
    (each) =>
      each.layer === 'reopen' &&
      (layer !== 'site' || (each.why !== null && REOPENS_SITE.includes(each.why))) &&
      (each.bore === null || layer !== 'bore' || each.bore === facts.bore),
  )
  return Math.max(Number.NEGATIVE_INFINITY, ...causes.map((each) => each.atMinute))
}

/** Signatures that still stand: named, not of the future, of today (the site's excepted), of this bore and plan. */
function standing(facts: GateFacts, layer: SignLayer): readonly SignOff[] {
  const { nowMinute, ticket, bore, plan } = facts
  const sinceMinute = openedAt(facts, layer)
  return facts.signOffs.filter((each) => {
    if (each.layer !== layer || plain(each.by) === '') return false
    if (each.atMinute > nowMinute || each.atMinute <= sinceMinute) return false
    if (layer === 'site') return true
    if (dayOf(each.atMinute) !== dayOf(nowMinute)) return false
    // Signed before the ticket began, it would come alive by waiting.
    if (ticket !== null && each.atMinute < ticket.startsMinute) return false
    return layer === 'day' || (each.bore === bore && each.plan === plan)
  })
}

const isAsked = ({ when }: SignItem, facts: GateFacts): boolean =>
  when === 'always' ||
  (when === 'lines' && facts.hasLines) ||
  (when === 'proved' && facts.hasProved) ||
  (when === 'watchers' && facts.watchersNeeded > 0)

const watchersNamed = (signed: readonly SignOff[]): number =>
  new Set(signed.flatMap((each) => each.watchers.map(plain)).filter((name) => name !== '')).size

/** What of the lists is still open at a point. */
function unsigned(facts: GateFacts, point: ReleasePoint): readonly OpenPoint[] {
  return SIGN_ITEMS.flatMap((item) => {
    if (item.point !== point || !isAsked(item, facts)) return []
    const signed = standing(facts, item.layer).filter((each) => each.items.includes(item.id))
    if (signed.length === 0) return [open('not-signed', item.id)]
    if (item.needsPhoto && !signed.some((each) => each.photos.includes(item.id))) {
      return [open('no-photo', item.id)]
    }
    const named = watchersNamed(signed)
    return item.when === 'watchers' && named < facts.watchersNeeded
      ? [open('watchers-short', item.id, { needed: facts.watchersNeeded, had: named })]
      : []
  })
}

/** Two different people, a reason, this bore, this plan, today; and only a rule that may be set aside at all. */
const isSetAside = (hold: PlanHold, bySigned: readonly SignOff[]): boolean =>
  maySetAside(hold.code, hold.kind) &&
  bySigned.some(
    ({ by, setAside }) =>
      setAside !== null &&
      setAside.code === hold.code &&
      setAside.line === hold.line &&
      setAside.reason.trim().length >= LEAST_REASON &&
      plain(setAside.second) !== '' &&
      plain(setAside.second) !== plain(by),
  )

function ticketOpen({ ticket, nowMinute }: GateFacts): readonly OpenPoint[] {
  if (ticket === null) return []
  if (nowMinute < ticket.startsMinute) return [open('ticket-not-yet', 'ticket')]
  return nowMinute >= ticket.expiresMinute ? [open('ticket-over', 'ticket')] : []
}

/** Freshness and place decide between check and ready; nothing else does once every point passes. */
function heldBack({ where, asOfMinute, nowMinute }: GateFacts): GateAnswer['why'] {
  if (where !== 'site') return 'elsewhere'
  const isFresh =
    asOfMinute !== null && asOfMinute <= nowMinute && nowMinute - asOfMinute < STALE_AFTER_MINUTES
  return isFresh ? null : 'stale'
}

function lastMinute({ nowMinute, ticket, asOfMinute }: GateFacts): number {
  const midnight = (dayOf(nowMinute) + 1) * MINUTES_PER_DAY
  return Math.min(
    midnight,
    ticket?.expiresMinute ?? midnight,
    (asOfMinute ?? nowMinute) + STALE_AFTER_MINUTES,
  )
}

/**
 * May the air be opened for this bore, here and now? Every one of the eleven points must be answered by a ticket field, a
 * measurement in the plan, or a signature; silence is a hold. Pure: the clock is handed in. Chances are no part of it.
 */
export function releaseGate(facts: GateFacts): GateAnswer {
  const bySigned = standing(facts, 'bore')
  const isAside = (hold: PlanHold): boolean => isSetAside(hold, bySigned)
  const asOpen = ({ code, line }: PlanHold): OpenPoint => open('plan-hold', code, { line })
  const holdsAt = (point: ReleasePoint | null): readonly PlanHold[] =>
    facts.holds.filter((each) => pointOfReason(each.code) === point)
  const points = RELEASE_POINTS.map((point) => {
    const holds = holdsAt(point)
    const noTicket = point === 1 && facts.ticket === null && holds.length === 0
    const left = [
      ...(noTicket ? [open('ticket-over', 'ticket')] : []),
      ...(point === 1 ? ticketOpen(facts) : []),
      ...holds.filter((each) => !isAside(each)).map(asOpen),
      ...unsigned(facts, point),
    ]
    const state = left.length > 0 ? 'hold' : holds.length > 0 ? 'set-aside' : 'pass'
    return { point, state, open: left } as const
  })
  const others = holdsAt(null)
    .filter((each) => !isAside(each))
    .map(asOpen)
  const isHeld = others.length > 0 || points.some((each) => each.state === 'hold')
  const why = isHeld ? null : heldBack(facts)
  const status = isHeld ? 'hold' : why === null ? 'ready' : 'check'
  const looked = facts.signOffs.filter(
    (each) =>
      each.layer === 'after' &&
      each.atMinute <= facts.nowMinute &&
      plain(each.by) !== '' &&
      (each.bore === null || each.bore === facts.bore),
  )
  const last = looked.at(-1)
  return {
    status,
    why,
    untilMinute: status === 'ready' ? lastMinute(facts) : null,
    points,
    others,
    watchers: {
      needed: facts.watchersNeeded,
      named: watchersNamed(bySigned.filter((each) => each.items.includes('watchers-named'))),
    },
    setAside: facts.holds.filter(isAside).length,
    after: last === undefined ? null : { by: last.by, atMinute: last.atMinute },
  }
}
