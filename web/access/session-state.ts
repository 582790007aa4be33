import { type ReadonlySignal, signal } from '@preact/signals'
import type { SessionAnswer, SignedIn } from '../../shared/contracts/access.ts'

const known = signal<SessionAnswer | null>(null)
const lost = signal(false)

/** Who is signed in, as the server said last; null before it has said anything. */
export const session: ReadonlySignal<SessionAnswer | null> = known

/** The server wants somebody to sign in before it takes or shows anything more. */
export const isSignedOut: ReadonlySignal<boolean> = lost

export function noteSession(answer: SessionAnswer): void {
  known.value = answer
  lost.value = answer.accounts && answer.signedIn === null
}

/** A request was turned away for want of a session: it has ended meanwhile. */
export function noteSignedOut(): void {
  lost.value = true
  if (known.value !== null) known.value = { ...known.value, accounts: true, signedIn: null }
}

export const signedIn = (): SignedIn | null => known.value?.signedIn ?? null
