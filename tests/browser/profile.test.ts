import { AxeBuilder } from '@axe-core/playwright'
import type { Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

async function openDemo(name: string, options: Parameters<Site['open']>[0]): Promise<Page> {
  const page = await site.open(options)
  await page.goto(site.address)
  await page.locator('.profile-drawing svg').waitFor()
  await page.getByRole('heading', { name: 'Assumed' }).waitFor()
  const choice = page.getByLabel('A crossing kept here')
  await choice.locator('option', { hasText: name }).waitFor({ state: 'attached' })
  await choice.evaluate((select) => {
    for (let at = select.closest('details'); at; at = at.parentElement?.closest('details') ?? null)
      at.open = true
  })
  await choice.selectOption({ label: name })
  await page.getByRole('heading', { level: 1, name }).waitFor()
  return page
}

const launch = (page: Page): Locator => page.getByRole('slider', { name: 'Launch' })
const cover = async (page: Page): Promise<string> =>
  (await page.locator('.profile-drawing svg > desc').textContent()) ?? ''
const hammering = (page: Page) => page.getByRole('row', { name: /^Hammering time/ })

test('a depth dragged by hand moves form, drawing and answers at once, and is undone', async () => {
  const page = await openDemo('Quarry Lane, road crossing in dense sand', {
    viewport: { width: 1280, height: 900 },
  })
  const coverBefore = await cover(page)
  const timeBefore = await hammering(page).textContent()
  const box = await launch(page).boundingBox()
  if (box === null) throw new Error('no handle')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x, y - 70, { steps: 6 })
  // Still held: the answers do not wait for the hand.
  await expect.poll(() => cover(page)).not.toBe(coverBefore)
  const depth = page.getByLabel('Depth at launch')
  expect(await depth.inputValue()).toMatch(/^[23] ft( \d+(-1\/2)? in)?$/)
  await expect.poll(() => hammering(page).textContent()).not.toBe(timeBefore)
  await page.mouse.up()
  await page.getByRole('button', { name: 'Undo: Launch back to 1.2 m' }).click()
  await expect.poll(() => depth.inputValue()).toBe('1.2 m')
  await expect.poll(() => cover(page)).toBe(coverBefore)
  expect(await hammering(page).textContent()).toBe(timeBefore)
  await page.locator('.profile-drawing .line-crossed ellipse').first().click()
  expect(await page.evaluate(() => document.activeElement?.id)).toMatch(/^field-utilities-0-/)
  await page.context().close()
})

test('without a hand: depth, zoom, the line crossed and its table, on a telephone, with nothing for axe', async () => {
  const page = await openDemo('Alder Road 14, water service', {
    viewport: { width: 390, height: 844 },
    hasTouch: true,
  })
  const slider = launch(page)
  const coverBefore = await cover(page)
  await slider.focus()
  await page.keyboard.press('PageUp')
  await page.keyboard.press('ArrowDown')
  await expect.poll(() => slider.getAttribute('aria-valuetext')).toBe('Launch: center 3 ft 6-1/2 in')
  await expect.poll(() => cover(page)).not.toBe(coverBefore)
  await page.keyboard.press('Escape')
  expect(await page.getByLabel('Depth at launch').inputValue()).toBe('4 ft')
  const pane = page.getByRole('region', { name: /^Drawing of the profile/ })
  await pane.focus()
  for (const key of ['+', '+', '+']) await page.keyboard.press(key)
  const middle = await pane.evaluate((view) => view.scrollLeft / view.scrollWidth)
  expect(middle).toBeGreaterThan(0.2)
  await page.keyboard.press('ArrowRight')
  await expect.poll(() => pane.evaluate((view) => view.scrollLeft / view.scrollWidth)).toBeGreaterThan(middle)
  await page.keyboard.press('0')
  await expect.poll(() => pane.evaluate((view) => view.scrollWidth - view.clientWidth)).toBe(0)
  await page.getByText('The same as a table').click()
  await page.getByText('Scale, file and paper').click()
  const { violations } = await new AxeBuilder({ page }).include('.profile').analyze()
  expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)).toEqual([])
  const door = page.getByRole('button', { name: /to its entry in the form$/ }).first()
  await door.focus()
  await page.keyboard.press('Enter')
  expect(await page.evaluate(() => document.activeElement?.id)).toMatch(/^field-utilities-0-/)
  await page.context().close()
})
