import { AxeBuilder } from '@axe-core/playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

test(
  'a card is two taps away with the network off, with the place and the numbers of the crossing in hand',
  async () => {
    const page = await site.open(PHONE)
    await page.goto(site.address)
    await page.getByRole('heading', { name: 'Emergency card' }).click()
    await page.getByLabel('Address, as help will find it').fill('Juniper Street 8')
    await page.getByRole('button', { name: 'Add a number to call' }).click()
    await page.getByLabel('Whose').fill('Town Gas')
    await page.getByLabel('Phone').fill('555-0142')
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
    await page.context().setOffline(true)
    const from = Date.now()
    await page.getByRole('link', { name: 'Line hit' }).click()
    await page.getByRole('link', { name: 'Gas hit' }).click()
    await page.getByText('Leave it. Do not go back to switch anything on or off near the gas.').waitFor()
    expect(Date.now() - from).toBeLessThan(3000)
    await page.getByRole('link', { name: 'Town Gas 555-0142' }).waitFor()
    await page.reload()
    await page.getByText('Juniper Street 8').first().waitFor()
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)).toEqual([])
    await page.getByRole('link', { name: 'Tool stuck' }).click()
    await page.getByLabel('Hose mark').fill('10 ft')
    await page.getByLabel('Tool and coupling').fill('4 ft')
    await page.getByText('Nose at 14 ft').waitFor()
    await page.context().close()
  },
  WAIT_MS,
)
