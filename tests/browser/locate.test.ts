import { readFileSync } from 'node:fs'
import { AxeBuilder } from '@axe-core/playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, acceptDownloads: true }

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

test(
  'a call becomes a start not before, an owner’s own day off moves it and is shown, renewals go to a calendar',
  async () => {
    const page = await site.open(PHONE)
    await page.goto(site.address)
    await page.getByRole('heading', { name: 'Locate ticket' }).click()
    await page.getByLabel('State or country').selectOption('US-VA')
    await page.getByLabel('Called in, time there').fill('2026-11-24T09:10')
    await page.getByText('Not before Mon 2026-11-30 07:00. Check your ticket.').waitFor()

    await page.getByText('Correct these rules for your firm').click()
    await page.getByLabel('Your name').fill('Rosa')
    await page.getByLabel('More days off').fill('2026-11-27')
    await page.getByRole('button', { name: 'Keep for everybody in the firm' }).click()
    await page.getByText('Not before Tue 2026-12-01 07:00. Check your ticket.').waitFor()
    await page.getByText(/^Changed for this firm by Rosa on \d{4}-\d{2}-\d{2}$/).waitFor()

    await page.getByLabel('Ticket: expires').fill('2026-12-15T07:00')
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Renewals for your calendar' }).click(),
    ])
    const text = readFileSync(await file.path(), 'utf8')
    expect(file.suggestedFilename()).toMatch(/\.ics$/)
    // Printed expiry alone: what was worked out from another start would only mislead.
    expect(text.match(/^DTSTART:.*$/gm)?.map((line) => line.trim())).toEqual(['DTSTART:20261215T070000'])

    await page.evaluate(() => {
      for (const folded of document.querySelectorAll('details')) folded.open = true
    })
    const { violations } = await new AxeBuilder({ page }).include('.crossing-form').analyze()
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(' ')}`)).toEqual([])
    await page.context().close()
  },
  WAIT_MS,
)
