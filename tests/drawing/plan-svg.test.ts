import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { run } from '../cli/run-in-process.ts'
import { demoDocument } from '../support/crossings.ts'

let workingFolder = ''
beforeAll(() => {
  workingFolder = mkdtempSync(join(tmpdir(), 'underlane-svg-'))
  writeFileSync(join(workingFolder, 'crossing.json'), JSON.stringify(demoDocument('firm-clay-service')))
})
afterAll(() => rmSync(workingFolder, { recursive: true }))

const drawing = (name: string): string => readFileSync(join(workingFolder, name), 'utf8')

describe('plan FILE --svg OUT', () => {
  test('writes the drawing and prints the plan as ever', async () => {
    const plain = await run(['plan', 'crossing.json'], { workingFolder })
    const withDrawing = await run(['plan', 'crossing.json', '--svg', 'out.svg'], { workingFolder })
    expect(withDrawing).toEqual(plain)
    expect(drawing('out.svg')).toMatch(/^<\?xml.*\n<svg xmlns="http:\/\/www.w3.org\/2000\/svg"/)
    expect(drawing('out.svg')).toContain('Alder Road 14, water service')
  })

  test('goes with the other options: one document on standard output, units, language, paper', async () => {
    const args = ['--json', '--units', 'si', '--lang', 'es', '--sheet', 'a4', '--svg', 'a4.svg']
    const { code, stdout } = await run(['plan', 'crossing.json', ...args], { workingFolder })
    expect(code).toBe(0)
    expect(JSON.parse(stdout).schema).toBe('underlane/plan@1')
    expect(drawing('a4.svg')).toContain('width="297mm" height="210mm"')
    expect(drawing('a4.svg')).toMatch(/Escala 1:\d+ impreso/)
  })

  test('a folder that is not there is refused, not lost', async () => {
    const { code, stderr } = await run(['plan', 'crossing.json', '--svg', 'nowhere/out.svg'], {
      workingFolder,
    })
    expect(code).toBe(2)
    expect(stderr).toContain('nowhere/out.svg')
  })
})
