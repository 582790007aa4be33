import { readFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000
const DEMO = 'Juniper Street 8, short-side water'
const DESK = { viewport: { width: 1280, height: 900 } }
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

/** The row of days for a time, good day to bad. */
const hammering = (page: Page) => page.getByRole('row', { name: /^Hammering time/ })
const verdict = (page: Page) => page.locator('.verdict')

async function openCrossing(options: Parameters<Site['open']>[0]): Promise<Page> {
  const page = await site.open(options)
  await page.goto(site.address)
  // The last part to arrive: from here on nothing more is fetched.
  await page.getByRole('heading', { name: 'Assumed' }).waitFor()
  return page
}

async function openDemo(page: Page): Promise<void> {
  const more = page.locator('details', { hasText: 'a usual job, a kept crossing, a file' })
  if ((await more.getAttribute('open')) === null) await more.locator('summary').click()
  const choice = page.getByLabel('A crossing kept here')
  await choice.locator('option', { hasText: DEMO }).waitFor({ state: 'attached' })
  await choice.selectOption({ label: DEMO })
  await page.getByRole('heading', { level: 1, name: DEMO }).waitFor()
}

async function changedFrom(page: Page, before: string | null): Promise<string | null> {
  await expect.poll(() => hammering(page).textContent(), { timeout: WAIT_MS }).not.toBe(before)
  return hammering(page).textContent()
}

const sidewaysScroll = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

describe.each([
  ['desk', DESK],
  ['phone', PHONE],
])('the crossing page at a %s', (_where, options) => {
  test('a demo crossing opens, and another hose moves the hammering time at once, and back', async () => {
    const page = await openCrossing(options)
    await openDemo(page)
    expect(await verdict(page).textContent()).toMatch(/hold|check/i)
    const wide = await hammering(page).textContent()
    await page.getByLabel('Hose bore (inside)').fill('1/4 in')
    const narrow = await changedFrom(page, wide)
    await page.getByLabel('Hose bore (inside)').fill('3/4 in')
    expect(await changedFrom(page, narrow)).toBe(wide)
    await page.context().close()
  })

  test('wrong input is answered with a sentence, kept as typed, and the last good answers stay', async () => {
    const page = await openCrossing(options)
    const before = await hammering(page).textContent()
    const length = page.getByLabel('Length, face to face')
    await length.fill('28 cubits')
    await length.press('Tab')
    await page.locator('#field-line-length-issues').getByText('28 cubits').waitFor()
    expect(await length.inputValue()).toBe('28 cubits')
    expect(await length.getAttribute('aria-invalid')).toBe('true')
    await page.getByText('From the last complete entry').waitFor()
    expect(await hammering(page).textContent()).toBe(before)
    await page.reload()
    expect(await page.getByLabel('Length, face to face').inputValue()).toBe('28 cubits')
    await page.context().close()
  })

  test('lines taken away are a hold, whatever was said before', async () => {
    const page = await openCrossing(options)
    await openDemo(page)
    await page.getByLabel('Nobody has been asked yet').check()
    await verdict(page).getByText('Hold').waitFor()
    await page.getByText('Nobody has said what lies in the ground here').waitFor()
    await page.context().close()
  })

  test('a figure opens its working with sources, by keyboard, and gives the focus back', async () => {
    const page = await openCrossing(options)
    const figure = page.getByRole('button', { name: /^At the tool/ })
    await figure.focus()
    await figure.press('Enter')
    const dialog = page.getByRole('dialog')
    await dialog.getByText('Sources').first().waitFor()
    expect(await dialog.getByText('air-operating-point').count()).toBeGreaterThan(0)
    await page.keyboard.press('Escape')
    await dialog.waitFor({ state: 'hidden' })
    expect(await figure.evaluate((button) => button === document.activeElement)).toBe(true)
    await page.context().close()
  })

  test('goes on answering when the signal is gone, workings too', async () => {
    const page = await openCrossing(options)
    const before = await hammering(page).textContent()
    await page.context().setOffline(true)
    await page.getByLabel('Length, face to face').fill('40 ft')
    await changedFrom(page, before)
    await page.getByRole('button', { name: /^At the tool/ }).click()
    await page.getByRole('dialog').getByText('Sources').first().waitFor()
    await page.context().close()
  })
})

/** Sums what moved unasked from the first paint on, also straight after a key. */
const WATCH_SHIFTS = `
  window.shifted = 0
  new PerformanceObserver((list) => {
    for (const each of list.getEntries()) window.shifted += each.value
  }).observe({ type: 'layout-shift', buffered: true })`
const shifted = (page: Page): Promise<number> => page.evaluate('window.shifted')

test('the first desk screen holds verdict, drawing and first fields, and nothing moves: neither at load nor while typing', async () => {
  const page = await site.open(DESK)
  await page.addInitScript(WATCH_SHIFTS)
  await page.goto(site.address)
  await page.getByRole('heading', { name: 'Assumed' }).waitFor()
  await page.locator('.profile-drawing svg').waitFor()
  await page.getByText('Not saved yet').waitFor()
  const length = page.getByLabel('Length, face to face')
  for (const part of [verdict(page), page.locator('.profile-pane'), length]) {
    const box = await part.boundingBox()
    expect((box?.y ?? 900) + (box?.height ?? 0)).toBeLessThanOrEqual(900)
  }
  const before = await hammering(page).textContent()
  await length.fill('31 ft')
  await changedFrom(page, before)
  expect(await shifted(page)).toBeLessThan(0.01)
  await page.context().close()
})

test('a pipe that cannot be read leaves answers that say they are of before; the hold leads to its reasons', async () => {
  const page = await openCrossing(PHONE)
  const note = page.locator('#field-pipes-0-note')
  await note.fill('purple pipe')
  await note.press('Tab')
  await verdict(page).getByText('Before the last entry').waitFor()
  await page.getByRole('button', { name: /^Pipe/ }).first().waitFor()
  await verdict(page).getByRole('link').click()
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('release-heading')
  await note.fill('3/4 K')
  await page.getByText('Before the last entry').waitFor({ state: 'detached' })
  await page.context().close()
})

test('answers are shown in the units chosen, and the choice is remembered', async () => {
  const page = await openCrossing(DESK)
  await page.getByLabel('SI', { exact: true }).check()
  await page.getByRole('button', { name: /^At the tool.*bar/ }).waitFor()
  await page.reload()
  await page.getByRole('button', { name: /^At the tool.*bar/ }).waitFor()
  await page.context().close()
})

test('a line given by positions is drawn on a plain grid, with nothing fetched from elsewhere', async () => {
  const page = await openCrossing(DESK)
  await page.getByLabel('positions of the pits').check()
  await page.getByLabel('Launch, longitude in degrees').fill('-78.1')
  await page.getByLabel('Launch, latitude in degrees').fill('38.2')
  await page.getByLabel('Receiving pit, longitude in degrees').fill('-78.0999')
  await page.getByLabel('Receiving pit, latitude in degrees').fill('38.2')
  await page.getByRole('region', { name: 'Map of the line between the pits' }).waitFor()
  await page.getByLabel('its length').check()
  expect(await page.getByLabel('Length, face to face').inputValue()).toBe('28 ft')
  await page.context().close()
})

test('a crossing is saved as a file and opened again, word for word', async () => {
  const page = await openCrossing(DESK)
  await page.getByLabel('Length, face to face').fill("27'6")
  await page.getByText('a usual job, a kept crossing, a file').click()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save as a file' }).click()
  const path = await (await download).path()
  await page.getByRole('button', { name: 'Fiber drop' }).click()
  await page.getByLabel('Open a file').setInputFiles(path)
  await page.getByRole('heading', { level: 1, name: 'Short-side water service' }).waitFor()
  expect(await page.getByLabel('Length, face to face').inputValue()).toBe("27'6")
  await page.context().close()
})

test('no page scrolls sideways, at 320 px and at twice the size of a desk, with everything unfolded', async () => {
  for (const viewport of [
    { width: 320, height: 700 },
    { width: 640, height: 450 },
  ]) {
    const page = await openCrossing({ viewport })
    for (const path of ['/', '/crossings', '/workings']) {
      await page.goto(new URL(path, site.address).href)
      await page.locator('main').waitFor()
      await page.evaluate(() => {
        for (const folded of document.querySelectorAll('details')) folded.open = true
      })
      expect([path, viewport.width, await sidewaysScroll(page)]).toEqual([path, viewport.width, 0])
    }
    await page.context().close()
  }
})

test('what the first screen needs is under 150 kB on the wire', () => {
  const folder = new URL('../../dist/web/', import.meta.url)
  const read = (path: string) => readFileSync(new URL(path, folder), 'utf8')
  const named = [...read('index.html').matchAll(/(?:src|href)="\/(assets\/[^"]+\.js)"/g)].map(
    ([, path]) => path ?? '',
  )
  // Whether the page names it or not: all that a script imports at its top is fetched before it runs.
  const needed = new Set(named)
  for (const path of needed) {
    for (const [, part] of read(path).matchAll(/(?:from|import) ?["']\.\/([\w.-]+\.js)["']/g))
      needed.add(`assets/${part}`)
  }
  expect(named.length).toBeGreaterThan(0)
  expect([...needed].filter((path) => !named.includes(path))).toEqual([])
  const bytes = [...needed].map((path) => gzipSync(read(path)).length)
  expect(bytes.reduce((sum, each) => sum + each, 0)).toBeLessThan(150_000)
})

describe.each(['light', 'dark'] as const)('axe, %s', (colorScheme) => {
  test.each([
    ['desk', DESK],
    ['phone', PHONE],
  ])('finds nothing on the crossing page at a %s', async (_where, options) => {
    const page = await openCrossing({ ...options, colorScheme })
    await page.evaluate(() => {
      for (const folded of document.querySelectorAll('details')) folded.open = true
    })
    const length = page.getByLabel('Length, face to face')
    await length.fill('28')
    await length.press('Tab')
    await page.locator('#field-line-length-issues .issue').waitFor()
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)).toEqual([])
    await page.context().close()
  })
})

test(
  'a first visit shows an example that says so; a new crossing is empty, and what it replaced comes back after a reload',
  async () => {
    const page = await openCrossing(DESK)
    await page.getByText(/^This is an example from an invented town/).waitFor()
    await page.getByRole('textbox', { name: 'Length, face to face' }).fill('31 ft')
    await page.getByRole('textbox', { name: 'Name of the crossing' }).fill('Elm Street 4')
    expect(await page.getByRole('button', { name: 'Start empty' }).count()).toBe(0)
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Saved' }).click()
    await page.getByRole('button', { name: 'New crossing' }).click()
    await page.getByText('Give the length to begin.').waitFor()
    const filled = await page
      .locator('.crossing-form input:not([type=radio]):not([type=file])')
      .evaluateAll((inputs) => inputs.flatMap((each) => ('value' in each && each.value ? [each.id] : [])))
    expect(filled).toEqual([])
    expect(await page.getByText('This is missing').count()).toBe(0)
    await page.reload()
    await page.getByText('“Elm Street 4” was replaced by “an empty crossing”.').first().waitFor()
    await page.getByRole('button', { name: 'Undo', exact: true }).first().click()
    await page.getByRole('heading', { level: 1, name: 'Elm Street 4' }).waitFor()
    expect(await page.getByRole('textbox', { name: 'Length, face to face' }).inputValue()).toBe('31 ft')
    const bore = page.getByLabel('Hose bore (inside)')
    await bore.fill('3/4')
    await bore.press('Tab')
    await page.getByRole('button', { name: '3/4 in', exact: true }).click()
    expect(await bore.inputValue()).toBe('3/4 in')
    const pressure = page.getByLabel('Compressor, gauge pressure')
    await pressure.fill('100#')
    await pressure.press('Tab')
    await page.getByRole('button', { name: '100 psi', exact: true }).click()
    expect(await pressure.inputValue()).toBe('100 psi')
    await page.context().close()
  },
  WAIT_MS,
)
