import { type ReadonlySignal, signal } from '@preact/signals'

export type Connection = 'online' | 'offline'

const state = signal<Connection>('online')
/** Can the server be reached? A network without our server behind it counts as none. */
export const connection: ReadonlySignal<Connection> = state

/** Whoever asks the server says what came of it; any answer at all, a refusal too, is an answer. */
export function noteReached(isReached: boolean): void {
  state.value = isReached ? 'online' : 'offline'
}

const HEALTH = '/api/health'
const ASK_AGAIN_MS = 20_000
/** One bar of signal can keep a request hanging for minutes. */
const GIVE_UP_MS = 8_000

async function askHealth(): Promise<void> {
  if (!navigator.onLine) return noteReached(false)
  try {
    await fetch(HEALTH, { signal: AbortSignal.timeout(GIVE_UP_MS), cache: 'no-store' })
    noteReached(true)
  } catch (error) {
    // TypeError: no connection. TimeoutError: none worth the name.
    if (!(error instanceof TypeError || error instanceof DOMException)) throw error
    noteReached(false)
  }
}

/** Watches the network, and asks after a server that was gone while somebody looks at the page. */
export function watchConnection(): void {
  addEventListener('offline', () => noteReached(false))
  addEventListener('online', askHealth)
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void askHealth()
  })
  setInterval(() => {
    if (state.value === 'offline' && document.visibilityState === 'visible') void askHealth()
  }, ASK_AGAIN_MS)
  void askHealth()
}
