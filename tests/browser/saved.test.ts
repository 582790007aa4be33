import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000
const DESK = { viewport: { width: 1280, height: 900 } }
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }
const NAME = 'Thistle Court 3, water service'
const COPY = `${NAME} (copy)`

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

const saving = (page: Page) => page.getByRole('region', { name: 'Saving' })
const said = (page: Page) => saving(page).getByRole('status')
const length = (page: Page) => page.getByLabel('Length, face to face')
const row = (page: Page, name: string) =>
  page.getByRole('list', { name: 'Crossings' }).getByRole('link', { name, exact: true })

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true })
  await field.fill(text)
  await field.press('Tab')
}

async function isAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)).toEqual([])
  const sideways = () =>
    page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  expect(await sideways()).toBe(0)
}

test(
  'a crossing is saved, found again after a reload, copied, deleted and brought back',
  async () => {
    const page = await site.open(PHONE)
    await page.goto(site.address)
    await said(page).getByText('Not saved yet').waitFor()
    await type(page, 'Name of the crossing', NAME)
    // Half typed, never left: a save takes it along.
    await length(page).fill("27'6")
    await page.keyboard.press('Control+s')
    await said(page).getByText('Saved at version 1').waitFor()
    expect(new URL(page.url()).pathname).toMatch(/^\/crossings\/[0-9a-f-]{36}$/)
    await length(page).fill('31 ft')
    await said(page).getByText('Changed since version 1').waitFor()
    await page.reload()
    await said(page).getByText('Changed since version 1').waitFor()
    expect(await length(page).inputValue()).toBe('31 ft')
    await saving(page).getByRole('button', { name: 'Save', exact: true }).click()
    await said(page).getByText('Saved at version 2').waitFor()
    await page.getByRole('navigation').getByRole('link', { name: 'Saved' }).click()
    await page.getByLabel('Find by name').fill('thistle')
    await page.getByRole('button', { name: `Duplicate: ${NAME}`, exact: true }).click()
    await row(page, COPY).waitFor()
    await page.getByRole('button', { name: `Delete: ${COPY}` }).click()
    await page.getByText(`Deleted “${COPY}”`).waitFor()
    await expect.poll(() => row(page, COPY).count()).toBe(0)
    await isAccessible(page)
    // The way back has the focus.
    await page.keyboard.press('Enter')
    await row(page, COPY).click()
    await said(page).getByText('Saved at version 3').waitFor()
    expect(await length(page).inputValue()).toBe('31 ft')
    await page.context().close()
  },
  WAIT_MS,
)

test(
  'two tabs change one crossing: the second is shown both versions and saves on top',
  async () => {
    const first = await site.open(DESK)
    await first.goto(new URL('/crossings', site.address).href)
    await row(first, 'Juniper Street 8, short-side water').click()
    await said(first).getByText('Saved at version').waitFor()
    // The server's refusal of the second is part of the journey: this tab may log it.
    const second = await first.context().newPage()
    await second.goto(first.url())
    await said(second).getByText('Saved at version').waitFor()
    await type(first, 'Length, face to face', '29 ft')
    await type(first, 'Tool diameter', '2-1/2 in')
    await first.keyboard.press('Control+s')
    await said(first).getByText('Saved at version 2').waitFor()
    await type(second, 'Length, face to face', '30 ft')
    await type(second, 'Hose bore (inside)', '1 in')
    await second.keyboard.press('Control+s')
    const both = second.getByRole('region', { name: 'Two versions of this crossing' })
    await both.waitFor()
    await isAccessible(second)
    await both.getByRole('group', { name: 'line' }).getByLabel('Theirs').check()
    // What is not decided yet outlives a reload.
    await second.reload()
    await both.getByRole('group', { name: 'line' }).getByLabel('Theirs').check()
    await both.getByRole('button', { name: 'Save on top of version 2' }).click()
    await said(second).getByText('Saved at version 3').waitFor()
    await first.reload()
    await said(first).getByText('Saved at version 3').waitFor()
    expect(await length(first).inputValue()).toBe('29 ft')
    expect(await first.getByLabel('Tool diameter').inputValue()).toBe('2-1/2 in')
    expect(await first.getByLabel('Hose bore (inside)').inputValue()).toBe('1 in')
    await first.context().close()
  },
  WAIT_MS,
)

test(
  'taken away with no signal: said so, brought back at once, or sent later and brought back from the server',
  async () => {
    const name = 'Larch Court 3'
    const page = await site.open(PHONE)
    await page.goto(new URL('/crossings', site.address).href)
    const link = page.getByRole('link', { name: new RegExp(`^${name}`) })
    await link.waitFor()
    const listed = async (): Promise<boolean> => {
      const answer = await fetch(new URL('/api/crossings?limit=500', site.address))
      return (await answer.text()).includes(name)
    }
    const remove = page.getByRole('button', { name: new RegExp(`^Delete: ${name}`) })
    const undo = page.getByRole('button', { name: new RegExp(`^Undo: bring back ${name}`) })
    await page.context().setOffline(true)
    await remove.click()
    await page.getByText('is taken away here; the server is told when the connection is back').waitFor()
    await page.getByText('1 change waits to be sent.').waitFor()
    await expect.poll(() => link.count()).toBe(0)
    await undo.click()
    await link.waitFor()
    await remove.click()
    await expect.poll(() => link.count()).toBe(0)
    await page.context().setOffline(false)
    await expect.poll(listed, { timeout: WAIT_MS }).toBe(false)
    await page.getByText(/^Deleted “Larch Court 3/).waitFor()
    await undo.click()
    await link.waitFor()
    await expect.poll(listed).toBe(true)
    await page.context().close()
  },
  WAIT_MS,
)
