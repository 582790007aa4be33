import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { A_CROSSING } from './run-in-process.ts'

const PROGRAM = new URL('../../src/cli/underlane.mjs', import.meta.url).pathname

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-program-'))
  writeFileSync(join(folder, 'crossing.json'), JSON.stringify(A_CROSSING))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

type Ended = { readonly code: number | null; readonly stdout: string; readonly stderr: string }

/** Starts the real program in a folder of its own; `onOutput` may end it early. */
function start(
  args: readonly string[],
  options: { stdin?: string; onOutput?: (text: string, stop: () => void) => void } = {},
) {
  return new Promise<Ended>((resolve, reject) => {
    const child = spawn(process.execPath, [PROGRAM, ...args], { cwd: folder })
    let stdout = ''
    let stderr = ''
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      stdout += text
      options.onOutput?.(stdout, () => child.kill('SIGINT'))
    })
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      stderr += text
    })
    child.once('error', reject)
    child.once('close', (code) => resolve({ code, stdout, stderr }))
    if (options.stdin !== undefined) child.stdin.end(options.stdin)
  })
}

describe('the program as it is installed', () => {
  test('plans a file named from where it is started', async () => {
    const { code, stdout, stderr } = await start(['plan', 'crossing.json', '--json'])
    expect([code, stderr]).toEqual([0, ''])
    expect(JSON.parse(stdout).schema).toBe('underlane/plan@1')
  })

  test('reads standard input, and refuses with 2', async () => {
    const { code, stdout } = await start(['plan', '-', '--json'], { stdin: '{}' })
    expect(code).toBe(2)
    expect(JSON.parse(stdout).schema).toBe('underlane/refusal@1')
  })

  test('serves, says where, and ends cleanly on Ctrl-C', async () => {
    let address = ''
    let health: Promise<number> | undefined
    const { code } = await start(['serve', '--port', '0', '--data', 'data'], {
      onOutput: (text, stop) => {
        address = /http:\S+/.exec(text)?.[0] ?? ''
        health ??= fetch(`${address}api/health`)
          .then((answer) => answer.status)
          .finally(stop)
      },
    })
    expect(await health).toBe(200)
    expect(code).toBe(0)
  })

  test('a port that is taken and a folder that cannot be are said in one sentence: 3', async () => {
    const blocker = createServer()
    const port = await new Promise<number>((resolve, reject) => {
      blocker.listen(0, '127.0.0.1', () => {
        const address = blocker.address()
        if (address !== null && typeof address === 'object') resolve(address.port)
        else reject(new Error('no port'))
      })
    })
    const taken = await start(['serve', '--port', String(port), '--data', 'data'])
    blocker.close()
    expect([taken.code, taken.stdout]).toEqual([3, ''])
    expect(taken.stderr).toContain(`Port ${port}`)
    expect(taken.stderr.trim().split('\n')).toHaveLength(1)

    const unwritable = await start(['serve', '--port', '0', '--data', 'crossing.json/inside'])
    expect([unwritable.code, unwritable.stdout]).toEqual([3, ''])
    expect(unwritable.stderr).toContain('--data')
  })
})
