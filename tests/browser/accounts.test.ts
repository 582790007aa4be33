import AxeBuilder from '@axe-core/playwright'
import { TOTP } from 'otpauth'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Site, startSite } from './running-site.ts'

const PASSWORD = 'mole hole pole bowl'
let site: Site
beforeAll(async () => {
  site = await startSite(['--host', '0.0.0.0', '--insecure-http'])
}, 120_000)
afterAll(() => site?.end(), 60_000)

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true }
const DESK = { viewport: { width: 1280, height: 900 } }

async function openAt(path: string, options: object = DESK): Promise<Page> {
  const page = await site.open(options)
  await page.goto(new URL(path, site.address).href)
  return page
}

const faultsOf = async (page: Page) =>
  (await new AxeBuilder({ page }).analyze()).violations.map(({ id, nodes }) => [id, nodes[0]?.html])

const buttonOf = (page: Page, name: string | RegExp) => page.getByRole('button', { name })

async function consoleCode(): Promise<string> {
  for (;;) {
    const found = /[0-9A-Z]{4}(-[0-9A-Z]{4}){3}/.exec(site.console())
    if (found) return found[0]
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
}

async function signIn(page: Page, login: string): Promise<void> {
  await page.getByLabel('Sign-in name').fill(login)
  await page.getByLabel('Password', { exact: true }).fill(PASSWORD)
  await page.locator('form').getByRole('button', { name: 'Sign in' }).click()
}

describe('an office', () => {
  let code = ''
  let link = ''

  test('the first owner types the code of the console, sets a second factor and lets somebody in', async () => {
    const page = await openAt('/')
    await page.getByRole('link', { name: 'Sign in' }).first().click()
    await page.getByRole('heading', { name: 'First owner' }).waitFor()
    expect(await faultsOf(page)).toEqual([])
    await page.getByRole('textbox', { name: 'Code' }).fill((await consoleCode()).toLowerCase())
    await buttonOf(page, 'Go on').click()
    await page.getByLabel('Name', { exact: true }).fill('Olga')
    await page.getByLabel('Sign-in name').fill('olga')
    await page.getByRole('textbox', { name: 'New password' }).fill('password1234')
    await buttonOf(page, 'Choose this password').click()
    await page.getByText('Many people would try this password first').waitFor()
    await page.getByRole('textbox', { name: 'New password' }).fill(PASSWORD)
    await buttonOf(page, 'Choose this password').click()
    await page.getByText('Without a second factor an owner may do').waitFor()
    await page.getByLabel('Password now').first().fill(PASSWORD)
    await buttonOf(page, 'Set a second factor').click()
    await page.getByRole('img', { name: 'The key as a square to scan' }).waitFor()
    expect(await faultsOf(page)).toEqual([])
    const key = ((await page.locator('.shown-once').textContent()) ?? '').replaceAll(' ', '')
    await page.getByRole('textbox', { name: 'Code' }).fill(new TOTP({ secret: key }).generate())
    await buttonOf(page, 'Confirm').click()
    await page.getByText('Write them down').waitFor()
    expect(await page.locator('.recovery-codes li').count()).toBe(10)
    await page.getByLabel('Name', { exact: true }).first().fill('Lee')
    await page.getByLabel('Sign-in name').fill('lee')
    await page.getByLabel('Role', { exact: true }).first().selectOption('estimator')
    await buttonOf(page, 'Add').first().click()
    await page.getByText('Give Lee this code').waitFor()
    code = (await page.locator('.panel', { hasText: 'People' }).locator('.shown-once').textContent()) ?? ''
    expect(await faultsOf(page)).toEqual([])
    await page.context().close()
  }, 60_000)

  test('who was let in chooses a password on a phone, saves, and makes a link', async () => {
    const page = await openAt('/sign-in', PHONE)
    await buttonOf(page, 'I have a code').click()
    await page.getByRole('textbox', { name: 'Code' }).fill(code)
    await buttonOf(page, 'Go on').click()
    await page.getByText('Choose a password for Lee').waitFor()
    await page.getByRole('textbox', { name: 'New password' }).fill(PASSWORD)
    await buttonOf(page, 'Choose this password').click()
    await page.getByRole('heading', { name: 'Saved crossings' }).waitFor()
    await page.getByRole('link', { name: 'My access: Lee' }).click()
    await page.getByRole('heading', { name: 'Links' }).waitFor()
    expect(await page.getByRole('heading', { name: 'People' }).count()).toBe(0)
    await page.getByLabel('For whom').fill('gas company')
    await page.waitForFunction(() => document.querySelectorAll('#link-crossing option').length > 3)
    await buttonOf(page, 'Make a link').click()
    link = (await page.locator('.shown-once').textContent()) ?? ''
    expect(link).toMatch(/\/shared#[\w-]{22}$/)
    // This page stands at localhost, and so does its link.
    await page.getByText('It opens on this machine only').waitFor()
    expect(await faultsOf(page)).toEqual([])
    const width = await page.evaluate(() => document.documentElement.scrollWidth)
    expect(width).toBeLessThanOrEqual(390)
    await page.context().close()
  }, 60_000)

  test('the link shows the crossing to somebody without an account', async () => {
    const page = await openAt(new URL(link).pathname + new URL(link).hash, PHONE)
    await page.getByText('The link ends').waitFor()
    const drawing = page.getByRole('img', { name: /^Long section of the crossing/ })
    expect(await drawing.evaluate((image) => image instanceof HTMLImageElement && image.naturalWidth)).toBe(
      960,
    )
    expect(await page.locator('main .status').textContent()).toMatch(/^\s*(hold|check)\s*$/i)
    expect(await page.textContent('main')).not.toMatch(/\$|USD|price/i)
    expect(await faultsOf(page)).toEqual([])
    await page.context().close()
  }, 60_000)

  test('a stranger sees no list, is told why, and still has the cards for a struck line', async () => {
    const page = await openAt('/crossings', PHONE)
    await page.getByText('You are signed out: only what this browser has kept').waitFor()
    expect(await faultsOf(page)).toEqual([])
    await page.goto(new URL('/access', site.address).href)
    await page.locator('main').getByRole('link', { name: 'Sign in' }).waitFor()
    await page.goto(new URL('/struck', site.address).href)
    await page.getByRole('heading', { level: 1 }).waitFor()
    expect(await page.getByRole('heading', { level: 1 }).textContent()).not.toMatch(/no page/)
    await page.context().close()
  }, 60_000)

  test('what is saved while signed out waits, and goes once somebody signs in', async () => {
    const page = await openAt('/sign-in')
    await signIn(page, 'lee')
    await page.getByRole('heading', { name: 'Saved crossings' }).waitFor()
    await page.getByRole('link', { name: 'Crossing', exact: true }).click()
    // Signed out on another device, so to speak: this page does not know yet.
    await page.context().clearCookies()
    await page.getByRole('button', { name: 'Save', exact: true }).click()
    await page.getByText('You are signed out. What you save waits').waitFor()
    await page.locator('.connection-note').getByRole('link', { name: 'Sign in' }).click()
    await signIn(page, 'lee')
    await page.getByRole('heading', { name: 'Saved crossings' }).waitFor()
    await page.waitForFunction(() => !document.querySelector('.connection-note p'))
    const kept = await page.evaluate(
      async () => (await (await fetch('/api/crossings?limit=500')).json()).items,
    )
    expect(kept.filter(({ demo }: { demo: boolean }) => !demo)).toHaveLength(1)
    await page.context().close()
  }, 60_000)

  test('signing in in Spanish with a wrong password, by keyboard', async () => {
    const page = await openAt('/sign-in', { ...PHONE, locale: 'es' })
    await page.getByRole('heading', { name: 'Entrar' }).waitFor()
    await page.getByLabel('Nombre de acceso').focus()
    await page.keyboard.type('lee')
    await page.keyboard.press('Tab')
    await page.keyboard.type('wrong but long enough')
    await page.keyboard.press('Enter')
    await page.getByText('El nombre o la contraseña no son correctos.').waitFor()
    expect(await faultsOf(page)).toEqual([])
    await page.context().close()
  }, 60_000)
})
