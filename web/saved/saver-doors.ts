import { dropChange, newKey } from '../offline/kept-crossings.ts'
import type { SaverDoors } from './saver.ts'
import { flushFor, sendOrQueue, whenSent } from './send-or-queue.ts'

/** The doors to the server and to this browser that a saver goes through. */
export const SAVER_DOORS: SaverDoors = {
  send: sendOrQueue,
  flush: flushFor,
  whenSent,
  newKey,
  drop: (requestKey) => void dropChange(requestKey),
}
