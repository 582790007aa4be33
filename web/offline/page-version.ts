import { type ReadonlySignal, signal } from '@preact/signals'

/** waiting: a new version is here and waits. taken: another tab has gone over to it; this one still shows the former. */
export type NewVersion = 'none' | 'waiting' | 'taken'

const state = signal<NewVersion>('none')
export const newVersion: ReadonlySignal<NewVersion> = state

const kept = signal(false)
/** Does this browser hold the page itself, so that it opens with the network off? */
export const isPageKept: ReadonlySignal<boolean> = kept

const LOOK_AGAIN_MS = 60 * 60 * 1000

const goingOver = signal(false)
/** Asked for, and on its way: it takes a moment before the page opens again. */
export const isGoingOver: ReadonlySignal<boolean> = goingOver

let registration: ServiceWorkerRegistration | null = null
let isAskedHere = false

function noticeWaiting(found: ServiceWorkerRegistration): void {
  // Without a controller it is the first version, which nobody has to ask for.
  if (found.waiting !== null && navigator.serviceWorker.controller !== null) state.value = 'waiting'
}

function watchNext(found: ServiceWorkerRegistration): void {
  const next = found.installing
  next?.addEventListener('statechange', () => noticeWaiting(found))
}

/** A browser without workers, a page over plain http, no network at the first visit: the page works, but is not kept. */
const isRefusal = (error: unknown): boolean => error instanceof DOMException || error instanceof TypeError

async function lookForNew(): Promise<void> {
  try {
    await registration?.update()
  } catch (error) {
    if (!isRefusal(error)) throw error
  }
}

/** Keeps the page in this browser and watches for new versions; never goes over to one unasked. */
export async function keepPage(): Promise<void> {
  if (!('serviceWorker' in navigator)) return
  const workers = navigator.serviceWorker
  let hadController = workers.controller !== null
  kept.value = hadController
  workers.addEventListener('controllerchange', () => {
    kept.value = true
    if (isAskedHere) location.reload()
    else if (hadController) state.value = 'taken'
    hadController = true
  })
  try {
    const found = await workers.register('/sw.js', { updateViaCache: 'none' })
    registration = found
    noticeWaiting(found)
    watchNext(found)
    found.addEventListener('updatefound', () => watchNext(found))
  } catch (error) {
    if (!isRefusal(error)) throw error
    return
  }
  setInterval(lookForNew, LOOK_AGAIN_MS)
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void lookForNew()
  })
}

/** Goes over to the new version: the page opens again, with what was typed. */
export function useNewVersion(): void {
  isAskedHere = true
  goingOver.value = true
  const waiting = registration?.waiting
  if (waiting) waiting.postMessage('use-now')
  else location.reload()
}
