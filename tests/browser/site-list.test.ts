import { Buffer } from 'node:buffer'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 90_000
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }
/** One white point. */
const PHOTO = {
  name: 'joint.png',
  mimeType: 'image/png',
  buffer: Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8/5+hHgAHggJ/PchI7wAAAABJRU5ErkJggg==',
    'base64',
  ),
}

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

const list = (page: Page) => page.getByRole('region', { name: 'On site, today' })
const layer = (page: Page, name: string) =>
  list(page).locator('.site-layer, details').filter({ hasText: name }).first()

/** The short-side water service with a ticket in force on this machine's clock. */
async function openSignable(page: Page): Promise<void> {
  await page.goto(site.address)
  const id = await page.evaluate(async () => {
    const day = (ahead: number) => new Date(Date.now() + ahead * 86_400_000).toISOString().slice(0, 10)
    const { items } = await (await fetch('/api/crossings')).json()
    const found = items.find((each: { name: string }) => /short-side water/.test(each.name))
    const ticket = { ...found.document.locate.ticket, starts: day(-2), expires: day(5) }
    const document = { ...found.document, locate: { ...found.document.locate, ticket } }
    await fetch(`/api/crossings/${found.id}`, {
      method: 'PUT',
      headers: { 'Content-Type': 'application/json', 'If-Match': `"${found.version}"` },
      body: JSON.stringify(document),
    })
    return found.id
  })
  await page.goto(`${site.address}crossings/${id}`)
  await list(page).waitFor()
}

async function sign(page: Page, name: string): Promise<void> {
  const part = layer(page, name)
  for (const file of await part.locator('input[type=file]').all()) await file.setInputFiles(PHOTO)
  await part
    .getByText('Photo taken')
    .first()
    .waitFor({ timeout: 5000 })
    .catch(() => undefined)
  await part.getByLabel('Your name').fill('Ada Crew')
  const watchers = part.getByLabel('Watchers, one name a line')
  if ((await watchers.count()) > 0) await watchers.fill('Bo\nCy\nDi')
  await part.getByRole('button', { name: 'Sign for all of these' }).click()
  await part.getByText('Signed.').waitFor()
}

test(
  'three signatures and three photos make a bore ready, on site; rain ends it; without a signal it works as well',
  async () => {
    const page = await site.open(PHONE)
    await openSignable(page)
    await list(page).getByText('Hold', { exact: true }).waitFor()
    await list(page).getByLabel('I am standing at this bore').check()
    await sign(page, 'Once a site')
    await page.context().setOffline(true)
    await sign(page, 'Once a day')
    await sign(page, 'This bore')
    await list(page).getByText('Ready', { exact: true }).waitFor()
    await list(page).getByText('2 signed here, not sent yet.').waitFor()
    const { violations } = await new AxeBuilder({ page })
      .include('section[aria-labelledby="site-heading"]')
      .analyze()
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)).toEqual([])
    await page.context().setOffline(false)
    await list(page)
      .getByText(/signed here, not sent yet/)
      .waitFor({ state: 'detached' })
    await list(page).getByLabel('I am standing at this bore').uncheck()
    await list(page).getByText('Check', { exact: true }).waitFor()
    await page.reload()
    await list(page).getByLabel('I am standing at this bore').check()
    await list(page).getByText('Ready', { exact: true }).waitFor()
    await layer(page, 'Something happened').locator('summary').click()
    await list(page).getByLabel('Who says so').fill('Bo')
    await list(page).getByRole('button', { name: 'Rain' }).click()
    await list(page).getByText('Hold', { exact: true }).waitFor()
  },
  WAIT_MS,
)
