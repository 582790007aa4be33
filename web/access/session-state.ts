import { type ReadonlySignal, signal } from '@preact/signals'
import type { SessionAnswer, SignedIn } from '../../shared/contracts/access.ts'
import { recall, remember } from '../state/browser-memory.ts'

/** Who works in this browser, for the time without a network and after a session has ended by itself. */
const KEY = 'underlane-works-as'

const known = signal<SessionAnswer | null>(null)
const lost = signal(false)

/** Who is signed in, as the server said last; null before it has said anything. */
export const session: ReadonlySignal<SessionAnswer | null> = known

/** The server wants somebody to sign in before it takes or shows anything more. */
export const isSignedOut: ReadonlySignal<boolean> = lost

export function noteSession(answer: SessionAnswer): void {
  known.value = answer
  lost.value = answer.accounts && answer.signedIn === null
  if (answer.signedIn !== null) remember(KEY, answer.signedIn.login)
}

/** They have gone, and said so: what is done here from now on is nobody's in particular. */
export const noteLeft = (): void => void remember(KEY, '')

/** Whose work it is; null for nobody who is known. */
export const worksAs = (): string | null => recall(KEY) || null

/** Does a change made by somebody go out under who is signed in now? Where nobody signs in, everything does. */
export const goesNow = (by: string | null): boolean =>
  by === null || known.value?.accounts === false || by === worksAs()

/** A request was turned away for want of a session: it has ended meanwhile. */
export function noteSignedOut(): void {
  lost.value = true
  if (known.value !== null) known.value = { ...known.value, accounts: true, signedIn: null }
}

export const signedIn = (): SignedIn | null => known.value?.signedIn ?? null
