import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { CATALOGUE } from '../../shared/core/catalogue.ts'
import { A_CROSSING, run } from './run-in-process.ts'

describe('the command line itself', () => {
  test.each([
    ['nothing-of-this-name'],
    ['plan'],
    ['plan', 'a', 'b'],
    ['checks', '--bogus'],
    ['plan', 'x', '--units', 'ells'],
  ])('cannot mean %s %s: 64, said on stderr only', async (...args) => {
    const { code, stdout, stderr } = await run(args)
    expect(code).toBe(64)
    expect(stdout).toBe('')
    expect(stderr).not.toBe('')
  })

  test.each([['--help'], ['--version'], ['help', 'plan'], ['relation', '--help']])(
    '%s %s is answered',
    async (...args) => {
      const { code, stdout } = await run(args)
      expect(code).toBe(0)
      expect(stdout).not.toBe('')
    },
  )

  test('no command at all shows how it is used', async () => {
    const { code, stdout, stderr } = await run([])
    expect(code).toBe(64)
    expect(stdout).toBe('')
    expect(stderr).toContain('plan')
  })
})

describe('relation', () => {
  test('lists every relation, as text and as JSON', async () => {
    const text = await run(['relation'])
    for (const { id } of CATALOGUE) expect(text.stdout).toContain(id)
    const { stdout } = await run(['relation', '--json'])
    expect(JSON.parse(stdout).map((each: { id: string }) => each.id)).toEqual(
      CATALOGUE.map((each) => each.id),
    )
  })

  test('evaluates one, and says what it assumed', async () => {
    const { code, stdout, stderr } = await run(['relation', 'deviation', 'station=30 ft', '--json'])
    expect([code, stderr]).toEqual([0, ''])
    const answer = JSON.parse(stdout)
    expect(answer).toMatchObject({ schema: 'underlane/relation@1', id: 'deviation' })
    expect(answer.inputs.stationM).toBeCloseTo(9.144, 12)
    expect(answer.defaulted).toEqual(expect.arrayContaining(['aim', 'drift']))
    expect(answer.outputs.sigmaM).toBeGreaterThan(0)
  })

  test('as text it shows the formula, the result and the source', async () => {
    const { code, stdout } = await run(['relation', 'deviation', 'station=30 ft'])
    expect(code).toBe(0)
    expect(stdout).toContain('sigmaM')
    expect(stdout).toContain('9.144 m')
  })

  test('an unknown one is 64 with the nearest, in JSON too', async () => {
    const { code, stdout, stderr } = await run(['relation', 'hose-loss', '--json'])
    expect(code).toBe(64)
    expect(stderr).not.toBe('')
    expect(JSON.parse(stdout)).toMatchObject({
      schema: 'underlane/refusal@1',
      issues: [{ code: 'unknown-relation', candidates: [{ value: 'hose-friction-loss' }] }],
    })
    expect((await run(['relation', 'deviatoin'])).stderr).toContain('deviation')
  })

  test('something missing, not known, twice or without its unit is 2', async () => {
    expect((await run(['relation', 'deviation'])).code).toBe(2)
    expect((await run(['relation', 'deviation', 'station=30 ft', 'colour=red'])).code).toBe(2)
    expect((await run(['relation', 'deviation', 'station=30 ft', 'station=31 ft'])).code).toBe(2)
    expect((await run(['relation', 'deviation', 'station=30'])).code).toBe(2)
    expect((await run(['relation', 'deviation', 'station=30 psi'])).code).toBe(2)
  })

  test('an argument that is no input is 64', async () => {
    expect((await run(['relation', 'deviation', '30ft'])).code).toBe(64)
  })
})

describe('checks', () => {
  test('all are met, and each says what it compared with what', async () => {
    const { code, stdout } = await run(['checks', '--json'])
    const result = JSON.parse(stdout)
    expect([code, result.schema, result.failed]).toEqual([0, 'underlane/checks@1', 0])
    expect(result.passed).toBe(result.checks.length)
    expect(Object.keys(result.checks[0])).toEqual(
      expect.arrayContaining([
        'relation',
        'name',
        'given',
        'expected',
        'computed',
        'deviation',
        'tolerance',
        'pass',
        'standing',
        'source',
      ]),
    )
  })

  test('as text the last line counts them', async () => {
    expect((await run(['checks'])).stdout.trimEnd().split('\n').at(-1)).toMatch(/^\d+ passed, 0 failed$/)
  })
})

describe('schema', () => {
  test('lists names, and prints one', async () => {
    expect((await run(['schema'])).stdout).toContain('crossing@1')
    const { code, stdout } = await run(['schema', 'crossing'])
    expect(code).toBe(0)
    expect(JSON.parse(stdout)).toMatchObject({ $id: 'underlane/crossing@1', type: 'object' })
  })

  test('an unknown name is 64', async () => {
    expect((await run(['schema', 'crossign'])).code).toBe(64)
  })
})

describe('plan', () => {
  let folder: string
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'underlane-cli-'))
    writeFileSync(join(folder, 'crossing.json'), `\uFEFF${JSON.stringify(A_CROSSING)}`)
    writeFileSync(join(folder, 'broken.json'), '{"name":')
    writeFileSync(
      join(folder, 'wrong.json'),
      JSON.stringify({ ...A_CROSSING, depth: { launch: '4 psi', to: 'centre' } }),
    )
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  const plan = (...args: string[]) => run(['plan', ...args], { workingFolder: folder })

  test('a held plan is done', async () => {
    const { code, stdout, stderr } = await plan('crossing.json', '--json')
    expect([code, stderr]).toEqual([0, ''])
    const document = JSON.parse(stdout)
    expect(document).toMatchObject({
      schema: 'underlane/plan@1',
      name: A_CROSSING.name,
      spread: { seed: 1, draws: 1024 },
      release: { status: 'hold' },
    })
    expect(document.input.sha256).toMatch(/^[0-9a-f]{64}$/)
    expect(document.bore.lengthM).toBeCloseTo(12.8016, 6)
  })

  test('a file that says the same in another order and spacing has the same fingerprint and the same figures', async () => {
    const turned = JSON.stringify(Object.fromEntries(Object.entries(A_CROSSING).reverse()), null, 4)
    const one = await plan('crossing.json', '--json')
    const other = await run(['plan', '-', '--json'], { stdin: turned })
    expect(other.stdout).toBe(one.stdout)
  })

  test('as text it says first whether it is held', async () => {
    const { code, stdout } = await plan('crossing.json')
    expect(code).toBe(0)
    expect(stdout).toMatch(new RegExp(`^${A_CROSSING.name}\\nHOLD: `))
    expect(stdout).toContain('psi')
    expect((await plan('crossing.json', '--units', 'si')).stdout).toContain(' bar')
    expect((await plan('crossing.json', '--working')).stdout.length).toBeGreaterThan(stdout.length)
    expect((await plan('crossing.json', '--lang', 'es')).stdout).toContain('Precauciones')
  })

  test('no figure is infinite or missing without a reason', async () => {
    const { stdout } = await plan('crossing.json')
    expect(stdout).not.toMatch(/NaN|Infinity|undefined|\[object/)
  })

  test.each(['broken.json', 'wrong.json', 'gone.json', '.'])(
    '%s is refused: 2, sentences on stderr',
    async (file) => {
      const { code, stdout, stderr } = await plan(file)
      expect([code, stdout]).toEqual([2, ''])
      expect(stderr).not.toBe('')
    },
  )

  test('asked for JSON, a refusal is one document on stdout, with a sentence in each issue', async () => {
    const { code, stdout } = await plan('wrong.json', '--json')
    expect(code).toBe(2)
    const { schema, issues } = JSON.parse(stdout)
    expect(schema).toBe('underlane/refusal@1')
    expect(issues.map((issue: { path: string }) => issue.path)).toEqual(
      expect.arrayContaining(['depth.launch', 'depth.reception']),
    )
    for (const issue of issues) expect(issue.text).not.toBe('')
  })
})

describe('serve', () => {
  test('a port that cannot be meant is 64', async () => {
    expect((await run(['serve', '--port', 'x'])).code).toBe(64)
  })
})
