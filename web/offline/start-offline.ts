/// <reference types="vite/client" />
import { watchConnection } from './connection.ts'
import { refresh } from './kept-crossings.ts'
import { keepPage } from './page-version.ts'

const MINUTE_MS = 60_000

/** All that goes on beside the page: it is kept in this browser, the network is watched, what waits is counted. */
export function startOffline(): void {
  watchConnection()
  void refresh()
  // Ages move on, and other tabs queue and send as well.
  setInterval(refresh, MINUTE_MS)
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void refresh()
  })
  // While developing, the page changes under the hand and is not kept.
  if (import.meta.env.MODE === 'production') void keepPage()
}
