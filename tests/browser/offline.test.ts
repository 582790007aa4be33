import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import { buildSync } from 'esbuild'
import type { Page } from 'playwright-core'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000
const DEMO = 'Juniper Street 8, short-side water'
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }
const CHANGE = { id: 'b1', kind: 'put', baseVersion: null, document: {}, key: 'k1', wasSent: false }

let site: Site
beforeEach(async () => {
  site = await startSite()
}, WAIT_MS)
afterEach(async () => site?.end(), WAIT_MS)

const hammering = (page: Page) => page.getByRole('row', { name: /^Hammering time/ })
const note = (page: Page) => page.getByRole('complementary', { name: 'Network and version' })

/** Answers are there, and the page and what the server listed are in this browser. */
async function openKept(): Promise<Page> {
  const page = await site.open(PHONE)
  await page.goto(site.address)
  await page.getByRole('heading', { name: 'Assumed' }).waitFor()
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
  await page.locator('option', { hasText: DEMO }).waitFor({ state: 'attached' })
  await expect
    .poll(() => inBrowser(page, 'keptList().then((list) => list.length)'), { timeout: WAIT_MS })
    .toBeGreaterThan(0)
  return page
}

/** What the page keeps crossings with, bundled for asking it by hand. */
const KEPT = buildSync({
  entryPoints: [new URL('../../web/offline/kept-crossings.ts', import.meta.url).pathname],
  bundle: true,
  write: false,
  format: 'iife',
  globalName: 'kept',
})
const inBrowser = (page: Page, call: string): Promise<unknown> =>
  page.evaluate(`(() => { ${KEPT.outputFiles[0]?.text}; return kept.${call} })()`)

async function worksAlone(page: Page): Promise<void> {
  await page.reload()
  await page.getByRole('heading', { name: 'Assumed' }).waitFor()
  await note(page).getByText('No network: answers still work. 1 change waits to be sent.').waitFor()
  const kept = page.locator('option', { hasText: `${DEMO}, kept just now` })
  await kept.waitFor({ state: 'attached' })
  await page.getByText('a usual job, a kept crossing, a file').click()
  await page.getByLabel('A crossing kept here').selectOption({ label: (await kept.textContent()) ?? '' })
  await page.getByRole('heading', { level: 1, name: DEMO }).waitFor()
  const before = await hammering(page).textContent()
  await page.getByLabel('Length, face to face').fill('33 ft')
  await expect.poll(() => hammering(page).textContent(), { timeout: WAIT_MS }).not.toBe(before)
  await page.getByRole('button', { name: /^At the tool/ }).click()
  await page.getByRole('dialog').getByText('Sources').first().waitFor()
  await page.keyboard.press('Escape')
}

test(
  'with the network off, and with no server at all, the page opens, answers and shows what it kept',
  async () => {
    const page = await openKept()
    expect(await inBrowser(page, `queueChange(${JSON.stringify(CHANGE)})`)).toBe(true)
    await page.context().setOffline(true)
    await worksAlone(page)
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)).toEqual([])
    await site.stopServer()
    await page.context().setOffline(false)
    await worksAlone(page)
    // A part that this page had never fetched.
    await page.getByRole('link', { name: 'Workings' }).click()
    await page.getByLabel('Find a formula').waitFor()
  },
  WAIT_MS,
)

/** Another version of the pages in the place of the one that runs. */
function release(folder: string): void {
  const pagePath = join(folder, 'index.html')
  writeFileSync(pagePath, readFileSync(pagePath, 'utf8').replace('<title>', '<title>Next '))
  const workerPath = join(folder, 'sw.js')
  writeFileSync(workerPath, readFileSync(workerPath, 'utf8').replace('"version":"', '"version":"next-'))
}

test(
  'a new version waits until it is asked for, loses nothing, and leaves other tabs alone',
  async () => {
    const page = await openKept()
    const other = await page.context().newPage()
    await other.goto(site.address)
    await page.getByLabel('Length, face to face').fill('31 ft')
    const worker = await fetch(new URL('sw.js', site.address))
    expect(worker.headers.get('Cache-Control')).toBe('no-cache')
    expect(worker.headers.get('Content-Security-Policy')).toContain("worker-src 'self'")
    release(site.webFolder)
    await page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()))
    await note(page).getByText('A new version is ready.').waitFor()
    await page.reload()
    await note(page).getByText('A new version is ready.').waitFor()
    expect(await page.title()).toBe('Underlane')
    await note(page).getByRole('button', { name: 'Use it now' }).click({ noWaitAfter: true })
    await expect.poll(() => page.title(), { timeout: WAIT_MS }).toBe('Next Underlane')
    expect(await page.getByLabel('Length, face to face').inputValue()).toBe('31 ft')
    await note(other).getByText('Another tab has gone over to a new version.').waitFor()
    expect(await other.title()).toBe('Underlane')
  },
  WAIT_MS,
)

test(
  'a crossing taken away with no signal, and changed by somebody else meanwhile, stays, and it is said',
  async () => {
    const page = await openKept()
    await page.goto(new URL('/crossings', site.address).href)
    const row = page.getByRole('listitem').filter({ has: page.getByRole('link', { name: DEMO }) })
    await row.waitFor()
    await page.context().setOffline(true)
    await row.getByRole('button', { name: /^Delete/ }).click()
    await page.getByText(/is taken away here; the server is told when the connection is back/).waitFor()
    const other = await site.open(PHONE)
    await other.goto(new URL('/crossings', site.address).href)
    await other.getByRole('link', { name: DEMO }).click()
    await other.getByRole('textbox', { name: 'Length, face to face' }).fill('34 ft')
    await other.getByRole('button', { name: 'Save', exact: true }).click()
    await other.getByText(/^Saved at version/).waitFor()
    await page.context().setOffline(false)
    await page.getByText(/has been changed meanwhile\. Look at it first, then try again\./).waitFor()
    await row.getByRole('link', { name: DEMO }).click()
    expect(await page.getByRole('textbox', { name: 'Length, face to face' }).inputValue()).toBe('34 ft')
  },
  WAIT_MS,
)
