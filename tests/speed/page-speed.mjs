// What one keystroke costs on the crossing page, beside an empty handler on an empty page in the same browser.
// Own work is script, style and layout time as the browser counts it; after-paint is from the event to the frame after.
import { spawn } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { chromium } from 'playwright-core'

const ROUNDS = 60
const WARM = 10
const PLACES = [process.env.CHROMIUM_PATH, '/usr/bin/chromium', '/usr/bin/google-chrome']
const FLAGS = ['--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-sync']

const p95 = (values) => [...values].sort((a, b) => a - b)[Math.ceil(values.length * 0.95) - 1]

/** Changes the field again and again; gives own work and time to after-paint of each change, in ms. */
async function measure(page, selector, texts) {
  const cdp = await page.context().newCDPSession(page)
  await cdp.send('Performance.enable')
  const spent = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics')
    const of = (name) => metrics.find((each) => each.name === name)?.value ?? 0
    return 1000 * (of('ScriptDuration') + of('LayoutDuration') + of('RecalcStyleDuration'))
  }
  const own = []
  const paint = []
  for (let round = 0; round < ROUNDS + WARM; round++) {
    const before = await spent()
    const took = await page.evaluate(
      ([where, text]) =>
        new Promise((resolve) => {
          const field = document.querySelector(where)
          const setter = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set
          const start = performance.now()
          setter.call(field, text)
          field.dispatchEvent(new Event('input', { bubbles: true }))
          field.dispatchEvent(new Event('change', { bubbles: true }))
          requestAnimationFrame(() =>
            requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - start))),
          )
        }),
      [selector, texts[round % texts.length]],
    )
    if (round < WARM) continue
    own.push((await spent()) - before)
    paint.push(took)
  }
  return { ownMs: p95(own), paintMs: p95(paint) }
}

async function serve(data) {
  const server = spawn(process.execPath, ['dist/server.mjs', '--port', '0', '--data', data], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  for await (const line of createInterface(server.stdout)) {
    const found = /http:\/\/\S+/.exec(line)
    if (found) return { server, address: found[0] }
  }
  throw new Error('the server did not say where it is')
}

/** Rows of the page; empty, with a line that says why, where there is no browser. */
async function pageRows() {
  const executablePath = PLACES.find((path) => path && existsSync(path))
  if (!executablePath) {
    process.stderr.write('No browser found: the page is not measured. Set CHROMIUM_PATH.\n')
    return []
  }
  const data = mkdtempSync(join(tmpdir(), 'underlane-speed-'))
  const { server, address } = await serve(data)
  const args = [...FLAGS, ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])]
  const browser = await chromium.launch({ executablePath, args })
  try {
    const empty = await browser.newPage()
    await empty.setContent('<input id="f"><script>document.getElementById("f").oninput = () => {}</script>')
    const nothing = await measure(empty, '#f', ['28 ft', '29 ft', '31 ft'])
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
    await page.goto(address, { waitUntil: 'networkidle' })
    const id = await page.getByLabel('Length, face to face').getAttribute('id')
    const ours = await measure(page, `[id="${id}"]`, ['28 ft', '29 ft', '31 ft', '33 ft'])
    const row = (name, value, baseline) => ({
      name,
      value,
      unit: 'ms',
      baseline,
      ratio: value / Math.max(baseline, 0.01),
    })
    return [
      row('page, own work per input, p95', ours.ownMs, nothing.ownMs),
      row('page, input to after-paint, p95', ours.paintMs, nothing.paintMs),
    ]
  } finally {
    await browser.close()
    server.kill('SIGTERM')
    rmSync(data, { recursive: true, force: true })
  }
}

process.stdout.write(`${JSON.stringify(await pageRows())}\n`)
