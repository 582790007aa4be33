import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000
const DESK = { viewport: { width: 1280, height: 900 } }
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

async function openRelation(page: Page, id: string): Promise<void> {
  await page.goto(new URL(`/workings#${id}`, site.address).href)
  await page.locator(`#${id} .formula`).waitFor()
}

describe.each([
  ['desk', DESK],
  ['phone', PHONE],
])('the workings at a %s', (_where, options) => {
  test('are reached from the crossing, tried live, and checked against print', async () => {
    const page = await site.open(options)
    await page.goto(site.address)
    await page.getByRole('navigation').getByRole('link', { name: 'Workings' }).click()
    await page.getByLabel('Find a formula').fill('standard atmosphere')
    await page.locator('#standard-atmosphere > summary').click()
    const card = page.locator('#standard-atmosphere')
    await card.getByLabel(/^altitude/).fill('2000 m')
    // U.S. Standard Atmosphere, 1976, table I: 275.154 K at 2,000 m of geometric altitude.
    await card.getByRole('row', { name: /temperature.*36 °F/ }).waitFor()
    await card.getByRole('button', { name: 'Run its printed checks' }).click()
    await card.getByText(/\d+ printed values met, 0 not met/).waitFor()
    await page.context().close()
  })

  test('all printed checks run in the browser, and none fails', async () => {
    const page = await site.open(options)
    await page.goto(new URL('/workings', site.address).href)
    await page.getByRole('button', { name: 'Run all printed checks' }).click()
    await page.getByText(/^\s*[1-9]\d+ printed values met, 0 not met/).waitFor({ timeout: WAIT_MS })
    await page.context().close()
  })
})

test('a formula is opened by its address, refuses in a sentence and offers what may be meant', async () => {
  const page = await site.open(DESK)
  await openRelation(page, 'hose-friction-loss')
  const card = page.locator('#hose-friction-loss')
  await card.getByLabel(/^bore/).fill('3/4')
  await card.getByRole('button', { name: /3\/4 in/ }).click()
  expect(await card.getByLabel(/^bore/).inputValue()).toBe('3/4 in')
  await page.context().close()
})

test('a printed example fills a form so that it answers', async () => {
  const page = await site.open(DESK)
  await openRelation(page, 'orifice-discharge')
  const card = page.locator('#orifice-discharge')
  await card.getByRole('button', { name: 'Fill in a printed example' }).click()
  await card.getByText('Gives').waitFor()
  await page.context().close()
})

test.each([
  ['desk', 'light', DESK],
  ['desk', 'dark', DESK],
  ['phone', 'light', PHONE],
  ['phone', 'dark', PHONE],
] as const)('axe finds nothing on the workings at a %s, %s', async (_where, colorScheme, options) => {
  const page = await site.open({ ...options, colorScheme })
  await openRelation(page, 'deviation')
  const card = page.locator('#deviation')
  await card.getByRole('button', { name: 'Run its printed checks' }).click()
  await card.getByText(/printed values met/).waitFor()
  const { violations } = await new AxeBuilder({ page }).analyze()
  expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)).toEqual([])
  await page.context().close()
})
