import { effect } from '@preact/signals'
import { connection } from '../offline/connection.ts'
import { outboxCount } from '../offline/kept-crossings.ts'
import { flush } from './send-or-queue.ts'

/** Sends what waits as soon as the server can be reached. */
export function flushWhenOnline(): () => void {
  return effect(() => {
    if (connection.value === 'online' && outboxCount.value > 0) void flush()
  })
}
