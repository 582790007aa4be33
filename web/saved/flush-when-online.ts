import { effect } from '@preact/signals'
import { isSignedOut } from '../access/session-state.ts'
import { connection } from '../offline/connection.ts'
import { outboxCount } from '../offline/kept-crossings.ts'
import { flush } from './send-or-queue.ts'

/** A server that answers but is in trouble is asked again after so long. */
const ASK_AGAIN_MS = 60_000

/** Sends what waits as soon as the server can be reached. */
export function flushWhenOnline(): void {
  const flushIfAny = () => {
    if (connection.value === 'online' && !isSignedOut.value && outboxCount.value > 0) void flush()
  }
  effect(flushIfAny)
  setInterval(flushIfAny, ASK_AGAIN_MS)
}
