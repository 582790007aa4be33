import '../../shared/text/spanish.ts'
import { describe, expect, test } from 'vitest'
import { PIPE_SYSTEMS } from '../../shared/tables/pipes.ts'
import { pipeName } from '../../shared/text/pipe-name.ts'
import { planText } from '../../src/cli/plan-text.ts'
import { planDocument } from '../../src/plan-document.ts'
import { DEMO_NAMES, demoDocument, inputOf } from '../support/crossings.ts'

const LANGUAGES = ['en', 'es'] as const
const SYSTEMS = ['us', 'si'] as const
/** 'copper-b88 1', 'pe-iso 32', 'coverM', 'SDR11', 'pe3608': names of ours that are no words. */
const RAW = /\b[a-z]+-[a-z0-9]+ \d|\b[a-z]+[A-Z]\w*|\bS?DR\d|\bSCH\d|\bpe\d{4}\b|undefined|\bNaN\b/
/** Units that look like one. */
const UNIT = /\b(?:kN|kPa|kJ|mL|kW|dB)\b/g

describe('the text of a plan', () => {
  for (const name of DEMO_NAMES) {
    const plan = planDocument(demoDocument(name))
    test(name, () => {
      if (!plan.ok) throw new Error(`no plan: ${JSON.stringify(plan.issues)}`)
      const input = inputOf(demoDocument(name))
      for (const language of LANGUAGES) {
        for (const units of SYSTEMS) {
          const text = planText(plan.value, input, { units, language, working: false })
          const raw = text.split('\n').filter((line) => RAW.test(line.replace(UNIT, '')))
          expect(raw).toEqual([])
        }
      }
    })
  }
})

describe('a pipe in words', () => {
  test.each([
    ['copper-b88 3/4 K', '3/4 in copper water tube, type K', 'tubo de cobre para agua de 3/4 in, tipo K'],
    [
      'pe-gas 1 CTS SDR11',
      '1 in CTS polyethylene gas pipe, SDR 11',
      'tubo de polietileno para gas de 1 in CTS, SDR 11',
    ],
    ['pe-iso 32 SDR11', '32 mm polyethylene pipe, SDR 11', 'tubo de polietileno de 32 mm, SDR 11'],
    ['steel 2 SCH40', '2 in steel pipe, schedule 40', 'tubo de acero de 2 in, cédula 40'],
    ['microduct 14/10 nominal', '14/10 mm microduct', 'microducto de 14/10 mm'],
    ['by-diameter', 'pipe by its diameter', 'tubo por su diámetro'],
    ['of-a-later-version', 'of-a-later-version', 'of-a-later-version'],
  ])('%s', (label, en, es) => {
    expect(pipeName(label, { lang: 'en', system: 'us' })).toBe(en)
    expect(pipeName(label, { lang: 'es', system: 'us' })).toBe(es)
  })

  test('every pipe of the tables has words', () => {
    for (const { id, sizes } of PIPE_SYSTEMS) {
      for (const { size, walls } of sizes) {
        for (const wall of Object.keys(walls)) {
          for (const lang of LANGUAGES) {
            const said = pipeName(`${id} ${size} ${wall}`, { lang, system: 'us' })
            expect(said).not.toMatch(RAW)
            if (id.includes('-')) expect(said).not.toContain(id)
          }
        }
      }
    }
  })
})
