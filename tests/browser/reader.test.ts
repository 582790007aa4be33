import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

const active = (page: Page) => page.evaluate(() => document.activeElement?.textContent?.trim() ?? '')

/** Tabs on until what has the focus says these words; a page where that takes forever is not for the keyboard. */
async function tabTo(page: Page, words: RegExp, most = 60): Promise<void> {
  for (let presses = 0; presses < most; presses++) {
    if (words.test(await active(page))) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`${most} tabs do not reach ${words}`)
}

async function axeFindings(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)
}

test('units, language and screen are switched, hold together, and are remembered', async () => {
  const page = await site.open({ viewport: { width: 390, height: 844 }, hasTouch: true })
  await page.goto(site.address)
  await page.getByRole('heading', { name: 'Release' }).waitFor()
  await page.getByRole('button', { name: /Units, language, screen/ }).click()
  await page.getByLabel('SI', { exact: true }).check()
  await page.getByText('a usual job, a kept crossing, a file').click()
  await page.getByRole('button', { name: 'Fibre drop' }).waitFor()
  await page.getByLabel('Español').check()
  await page.getByRole('heading', { name: 'Liberación' }).waitFor()
  await page.getByRole('button', { name: /^En el topo.*bar/ }).waitFor()
  await page.getByLabel('Pantalla').selectOption('sun')
  expect(
    await page.evaluate(() => [document.documentElement.lang, document.documentElement.dataset.theme]),
  ).toEqual(['es', 'sun'])
  await page.reload()
  await page.getByRole('heading', { name: 'Supuestos' }).waitFor()
  expect(await axeFindings(page)).toEqual([])
  await page.getByRole('link', { name: 'Respuestas' }).click()
  await expect.poll(() => page.getByRole('heading', { name: 'Las respuestas' }).isVisible()).toBe(true)
  await page.context().close()
})

test('by keyboard alone a way is kept, changed, compared and taken back, and a figure leads to its formula and back', async () => {
  const page = await site.open({ viewport: { width: 1280, height: 900 } })
  await page.goto(site.address)
  await page.getByRole('heading', { name: 'Assumed' }).waitFor()
  await page.getByRole('button', { name: 'Keep this as A' }).focus()
  await page.keyboard.press('Enter')
  await page.getByRole('table', { name: 'A beside what stands now' }).waitFor()
  await page.getByLabel('Length, face to face').focus()
  await page.keyboard.press('Control+A')
  await page.keyboard.type('40 ft')
  await page.getByRole('row', { name: /Hammering, likely.*\+\d+ min longer/ }).waitFor()
  await tabTo(page, /^Back to A$/)
  await page.keyboard.press('Enter')
  expect(await page.getByLabel('Length, face to face').inputValue()).toBe('28 ft')
  await page.getByRole('button', { name: /^Hammering time, likely/ }).focus()
  await page.keyboard.press('Enter')
  const dialog = page.getByRole('dialog')
  await dialog.getByText('P50: half are lower').waitFor()
  await tabTo(page, /^Run its printed checks$/)
  await page.keyboard.press('Enter')
  await dialog.getByText(/printed values met, 0 not met/).waitFor()
  await tabTo(page, /^In the list of workings/)
  await page.keyboard.press('Enter')
  await page.getByRole('link', { name: /^Back to the figure/ }).focus()
  await page.keyboard.press('Enter')
  await page.getByRole('dialog').getByText('P50: half are lower').waitFor()
  await page.context().close()
})
