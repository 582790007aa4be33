import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { canonicalJson } from '../../shared/contracts/canonical-json.ts'
import { type Site, startSite } from './running-site.ts'

const WAIT_MS = 60_000
const MOST_PAGES = 4
const HELD = readFileSync(new URL('../../src/store/demo/dense-sand-road.json', import.meta.url), 'utf8')
const MM_PER_INCH = 25.4

let site: Site
beforeAll(async () => {
  site = await startSite()
}, WAIT_MS)
afterAll(async () => site?.end(), WAIT_MS)

type Reader = { readonly draft: string; readonly language: 'en' | 'es'; readonly units: 'us' | 'si' }

async function openDraft({ draft, language, units }: Reader): Promise<Page> {
  const page = await site.open({ viewport: { width: 1280, height: 900 }, colorScheme: 'dark' })
  await page.addInitScript(
    ([kept, lang, system]) => {
      localStorage.setItem('underlane.draft', kept)
      localStorage.setItem('underlane.language', lang)
      localStorage.setItem('underlane.units', system)
    },
    [draft, language, units] as const,
  )
  await page.goto(site.address)
  await page.locator('.crossing-form').waitFor()
  // The sheet is fetched after the page: it is there once it answers.
  const isReady = async () => {
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
    return page.locator('.job-sheet').count()
  }
  await expect.poll(isReady, { timeout: WAIT_MS }).toBe(1)
  return page
}

/** Page objects stand uncompressed in what the browser writes. */
const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0

/** Prints it, and what then stands on the paper. */
async function printed(page: Page, format: 'Letter' | 'A4') {
  const pdf = await page.pdf({ format })
  await page.emulateMedia({ media: 'print' })
  const sheet = page.locator('.job-sheet')
  return { pages: pagesOf(pdf), sheet }
}

describe('print structure', () => {
  test.each([
    [
      'Letter',
      'en',
      'us',
      ['planned, not released', 'Once a day', 'Once a site', 'For this bore', 'measured today'],
    ],
    [
      'A4',
      'es',
      'si',
      ['planeado, no liberado', 'Una vez al día', 'Una vez por sitio', 'Para esta perforación'],
    ],
  ] as const)(
    'a held crossing is a job sheet of a few pages on %s, %s',
    async (format, language, units, said) => {
      const page = await openDraft({ draft: HELD, language, units })
      await page.locator('.profile-drawing').waitFor()
      const { pages, sheet } = await printed(page, format)
      expect(pages).toBeGreaterThan(1)
      expect(pages).toBeLessThanOrEqual(MOST_PAGES)
      const text = (await sheet.textContent()) ?? ''
      expect(text).toContain('Quarry Lane, road crossing in dense sand')
      for (const words of said) expect(text).toContain(words)
      const hash = createHash('sha256')
        .update(canonicalJson(JSON.parse(HELD)))
        .digest('hex')
        .slice(0, 8)
      expect(text).toContain(hash)
      expect(await sheet.locator('h2').count()).toBeGreaterThanOrEqual(8)
      expect(await sheet.locator('button, input, select, a, summary').count()).toBe(0)
      expect(await page.locator('main.crossing').isVisible()).toBe(false)
      // A drawing in millimetres keeps its scale: 182 mm wide on either paper.
      const box = await sheet.locator('svg').boundingBox()
      expect(((box?.width ?? 0) / 96) * MM_PER_INCH).toBeCloseTo(182, 0)
      const clipped = await sheet.evaluate((root) =>
        [...root.querySelectorAll('td, dd, dt, li, p, th')]
          .filter((each) => each.scrollWidth > each.clientWidth + 1)
          .map((each) => each.textContent),
      )
      expect(clipped).toEqual([])
      await page.context().close()
    },
    WAIT_MS,
  )

  test(
    'a crossing that cannot be planned prints what is missing, and no figure',
    async () => {
      const draft = '{"schema":"underlane/crossing@1","name":"Begun","line":{"length":"28 ft"}}'
      const page = await openDraft({ draft, language: 'en', units: 'us' })
      const { pages, sheet } = await printed(page, 'Letter')
      expect(pages).toBe(1)
      const text = (await sheet.textContent()) ?? ''
      expect(text).toContain('Begun')
      expect(text).toContain('No plan: nothing on this sheet has been worked out')
      expect(text).toContain('not planned, not released')
      expect(text).toContain('still to be given')
      expect(await sheet.locator('svg').count()).toBe(0)
      await page.context().close()
    },
    WAIT_MS,
  )

  test(
    'an open formula prints alone, on two sheets at most, without buttons',
    async () => {
      const page = await site.open({ viewport: { width: 1280, height: 900 } })
      await page.goto(new URL('/workings#hose-friction-loss', site.address).href)
      const card = page.locator('#hose-friction-loss')
      await card.getByRole('button', { name: 'Fill in a printed example' }).click()
      await card.getByText('Gives').waitFor()
      const pdf = await page.pdf({ format: 'Letter' })
      expect(pagesOf(pdf)).toBeLessThanOrEqual(2)
      await page.emulateMedia({ media: 'print' })
      expect(await card.locator('.formula').isVisible()).toBe(true)
      expect(await page.locator('.relation:visible').count()).toBe(1)
      expect(await page.locator('main button:visible, main summary ~ a:visible').count()).toBe(0)
      await page.context().close()
    },
    WAIT_MS,
  )
})
