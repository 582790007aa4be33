import { PAGE, shellPath } from './shell-path.ts'

/** Put before this file by the build: what a version of the page consists of. */
declare const UNDERLANE_SHELL: {
  readonly version: string
  /** The script the page of this version starts with. */
  readonly entry: string
  readonly files: readonly string[]
}

type LifeEvent = { waitUntil(work: Promise<unknown>): void }
type Worker = {
  addEventListener(name: 'install' | 'activate', act: (event: LifeEvent) => void): void
  addEventListener(name: 'message', act: (event: { readonly data: unknown }) => void): void
  addEventListener(
    name: 'fetch',
    act: (event: { readonly request: Request; respondWith(answer: Promise<Response>): void }) => void,
  ): void
  skipWaiting(): Promise<void>
  readonly clients: { claim(): Promise<void> }
}
// The types of a worker and of a page cannot be had in one program; these are the few names used here.
declare const self: Worker
const worker = self

const { version, entry, files } = UNDERLANE_SHELL
const PREFIX = 'underlane-shell-'
const NAME = `${PREFIX}${version}`
/** This version, and the one before for tabs that still show it. */
const VERSIONS_KEPT = 2

/** All of a version or nothing: a page without one of its parts would fail where nobody can mend it. */
async function keepShell(): Promise<void> {
  const cache = await caches.open(NAME)
  try {
    const page = await fetch(PAGE, { cache: 'reload' })
    const isOurs = page.ok && !page.redirected && (await page.clone().text()).includes(entry)
    if (!isOurs) throw new Error('the server has another version by now')
    await cache.addAll(files)
    await cache.put(PAGE, page)
  } catch (error) {
    await caches.delete(NAME)
    throw error
  }
}

async function forgetOldShells(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(PREFIX))
  await Promise.all(names.slice(0, -VERSIONS_KEPT).map((name) => caches.delete(name)))
}

async function answer(path: string, request: Request): Promise<Response> {
  const shell = await caches.open(NAME)
  const found =
    (await shell.match(path, { ignoreVary: true })) ?? (await caches.match(path, { ignoreVary: true }))
  return found ?? fetch(request)
}

worker.addEventListener('install', (event) => event.waitUntil(keepShell()))
worker.addEventListener('activate', (event) =>
  event.waitUntil(forgetOldShells().then(() => worker.clients.claim())),
)
// A new version waits until somebody asks for it.
worker.addEventListener('message', ({ data }) => {
  if (data === 'use-now') void worker.skipWaiting()
})
worker.addEventListener('fetch', (event) => {
  const { request } = event
  const { origin, pathname } = new URL(request.url)
  if (request.method !== 'GET' || origin !== location.origin) return
  const path = shellPath(pathname, { isNavigation: request.mode === 'navigate', files })
  if (path !== null) event.respondWith(answer(path, request))
})
