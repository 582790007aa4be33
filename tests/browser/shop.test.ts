import { AxeBuilder } from '@axe-core/playwright'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 90_000
/** As high as a glove needs. */
const TARGET_PX = 48

let site: Site
beforeEach(async () => {
  site = await startSite()
}, WAIT_MS)
afterEach(async () => site?.end(), WAIT_MS)

test(
  'a ring is measured with no signal, asked about, judged, and holds its tool; the sheet is sent when there is signal',
  async () => {
    const page = await site.open({ viewport: { width: 390, height: 844 }, hasTouch: true })
    await page.goto(new URL('/shop', site.address).href)
    await page.getByRole('link', { name: 'No. 1, 3 in' }).click()
    await page.getByRole('link', { name: 'Inspect' }).click()
    await page.getByLabel('Who looked').waitFor()
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
    await page.context().setOffline(true)
    await page.reload()
    await page.getByLabel('Who looked').fill('Ada')
    const gap = page.getByLabel('end gap, by feeler (in)')
    await gap.fill('0.06')
    await page.getByText(/is less worn than last time/).waitFor()
    const save = page.getByRole('button', { name: 'Save the inspection' })
    expect(await save.isDisabled()).toBe(true)
    await gap.fill('0.16')
    await page.getByText('past its limit').waitFor()
    const small = await page.evaluate(
      (least) =>
        [...document.querySelectorAll('main button, main a, main select, main label:has(input), main input')]
          .filter((each) => each.matches(':not(label input)'))
          .map((each) => each.getBoundingClientRect().height)
          .filter((height) => height > 0 && height < least - 0.5),
      TARGET_PX,
    )
    expect(small).toEqual([])
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)).toEqual([])
    await save.click()
    await page.getByText(/^No connection: kept in this browser/).waitFor()
    await page.goto(new URL('/shop', site.address).href)
    const first = page.getByRole('listitem').filter({ has: page.getByRole('link', { name: 'No. 1, 3 in' }) })
    await first.getByText('Do not issue').waitFor()
    await page.context().setOffline(false)
    await page.reload()
    await first.getByText('Do not issue').waitFor()
    const listed = () =>
      page.evaluate(() =>
        fetch('/api/inspections').then(async (answer) => (await answer.json()).items.length),
      )
    await expect.poll(listed, { timeout: WAIT_MS }).toBe(6)
  },
  WAIT_MS,
)
