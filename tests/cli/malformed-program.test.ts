import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { A_CROSSING } from './run-in-process.ts'

/**
 * Twenty malformed files through the real program: all of them to one server, as a page would send them, and by a shell
 * every third in the everyday run (program starts are dear) and all twenty in the slow one.
 */
const PROGRAM = new URL('../../src/cli/underlane.mjs', import.meta.url).pathname
const SEED = 20261124
const IS_SLOW = process.env.UNDERLANE_SLOW === '1'

const broken: readonly string[] = [
  '',
  '{',
  'null',
  '[]',
  '{"schema":"underlane/crossing@9"}',
  '\u0000\u0001',
  `{"name":"${'x'.repeat(100_000)}"}`,
  JSON.stringify({ ...A_CROSSING, line: { length: 42 } }),
  JSON.stringify({ ...A_CROSSING, tool: { diameter: '2.5 parsecs' } }),
  JSON.stringify({ ...A_CROSSING, ground: [] }),
]
const sampled = fc
  .sample(fc.constantFrom(...Object.keys(A_CROSSING).filter((key) => key !== 'schema')), {
    seed: SEED,
    numRuns: 10,
  })
  .map((key) => JSON.stringify({ ...A_CROSSING, [key]: { nonsense: 'yes' } }))

describe(`malformed files through the real program (seed ${SEED})`, () => {
  const files = [...broken, ...sampled]
  test.each(IS_SLOW ? files : files.filter((_, index) => index % 3 === 0))(
    '%#: refused with 2 and a document, never a trace',
    (text) => {
      const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, 'plan', '-', '--json'], {
        input: text,
        encoding: 'utf8',
      })
      expect(status).toBe(2)
      const refusal = JSON.parse(stdout) as { schema: string; issues: { path: string; text: string }[] }
      expect(refusal.schema).toBe('underlane/refusal@1')
      expect(refusal.issues.length).toBeGreaterThan(0)
      for (const issue of refusal.issues) expect(issue.text.length).toBeGreaterThan(5)
      expect(stderr).not.toMatch(/\n\s+at |Error:/)
    },
  )

  test('one server refuses all twenty and still plans', async () => {
    const data = mkdtempSync(join(tmpdir(), 'underlane-malformed-'))
    const server = spawn(process.execPath, [PROGRAM, 'serve', '--port', '0', '--data', data])
    const ended = new Promise((resolve) => server.once('close', resolve))
    try {
      const address = await new Promise<string>((resolve) => {
        let said = ''
        server.stdout.setEncoding('utf8').on('data', (text: string) => {
          said += text
          const found = /http:\S+/.exec(said)?.[0]
          if (found !== undefined) resolve(found)
        })
      })
      const post = (body: string) =>
        fetch(`${address}api/plans`, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body,
        })
      for (const text of files) {
        const answer = await post(text)
        expect([400, 422], text.slice(0, 60)).toContain(answer.status)
        const said = (await answer.json()) as { code: string; requestId: string; issues: unknown[] }
        expect(said.requestId.length).toBeGreaterThan(0)
        expect(Array.isArray(said.issues)).toBe(true)
      }
      expect((await post(JSON.stringify(A_CROSSING))).status).toBe(200)
    } finally {
      server.kill('SIGINT')
      await ended
      rmSync(data, { recursive: true, force: true })
    }
  })
})
