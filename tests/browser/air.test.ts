import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

const air = (page: Page) => page.locator('section[aria-labelledby="air-heading"]')
const answer = (page: Page) => page.locator('section[aria-labelledby="air-answer-heading"]')
const unfold = (page: Page, words: string) => page.locator('summary', { hasText: words }).first().click()

async function opened(): Promise<Page> {
  const page = await site.open(PHONE)
  await page.goto(site.address)
  await page.getByRole('heading', { name: 'Assumed' }).waitFor()
  await page.locator('summary', { hasText: 'From your shop' }).waitFor()
  return page
}

/** A tool that takes 100 cfm on 100 ft of thin hose: there is something to mend. */
async function withThinHose(page: Page): Promise<void> {
  await page.locator('#field-air-hoses-0-length').fill('100 ft')
  await page.locator('#field-air-hoses-0-length').blur()
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('section[aria-labelledby="tool-heading"] details'))
      details.setAttribute('open', '')
  })
  await page.locator('#field-tool-airDemand').fill('120')
  await page.locator('#field-tool-airDemand').blur()
}

test(
  'what would help is said beside the pressure, and the pictures come with tables; axe finds nothing',
  async () => {
    const page = await opened()
    await withThinHose(page)
    const help = answer(page).locator('details', { hasText: 'What would help' })
    await help.waitFor()
    if ((await help.getAttribute('open')) === null) await help.locator('summary').first().click()
    await answer(page).getByText('Hose of 1 in in place of 3/4 in.').waitFor()
    await unfold(page, 'Air in pictures')
    await page.locator('.air-pictures svg').nth(5).waitFor()
    expect(await page.locator('.air-pictures details').count()).toBe(3)
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
    ).toBe(0)
    const { violations } = await new AxeBuilder({ page }).include('section.panel').analyze()
    expect(violations.map(({ id }) => id)).toEqual([])
    await page.context().close()
  },
  WAIT_MS,
)

test(
  'a gauge reading corrects the hoses, and compressor and hoses are kept and picked again',
  async () => {
    const page = await opened()
    await withThinHose(page)
    await unfold(page, 'From your shop')
    await page.locator('#reading-pressure').fill('75 psi')
    await page.getByRole('button', { name: 'Reckon by this reading' }).click()
    await expect
      .poll(() => answer(page).locator('.figure-value').first().textContent(), { timeout: WAIT_MS })
      .toBe('75 psi')
    await page.locator('#shop-name').fill('Yard hose')
    await air(page).getByRole('button', { name: 'Save the hoses' }).click()
    await air(page).getByText('Saved.').waitFor()
    await page.locator('#shop-hoses').selectOption({ label: 'Yard hose' })
    await air(page).getByRole('button', { name: 'Add it' }).click()
    await expect.poll(() => page.locator('#field-air-hoses-1-bore').inputValue()).toBe('3/4 in')
    expect(Number(await page.locator('#field-air-hoses-1-lossFactor').inputValue())).toBeGreaterThan(1)
    await page.context().close()
  },
  WAIT_MS,
)
