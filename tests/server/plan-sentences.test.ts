import { expect, test } from 'vitest'
import '../../shared/text/spanish.ts'
import { planDocument } from '../../src/plan-document.ts'
import { planWithText } from '../../src/plan-with-text.ts'
import { unitsOfFile } from '../../src/units-of-file.ts'
import { demoDocument } from '../support/crossings.ts'

const planned = (name: string) => {
  const made = planDocument(demoDocument(name))
  if (!made.ok) throw new Error(JSON.stringify(made.issues))
  return made.value
}

test.each(['en', 'es'] as const)(
  'in %s every code has its sentence beside it, and keeps its values',
  (lang) => {
    const plan = planned('dense-sand-road')
    const said = planWithText(plan, { lang, system: 'si' })
    for (const each of [...said.release.reasons, ...said.cautions, ...said.checklist]) {
      expect(each.text.length).toBeGreaterThan(10)
    }
    expect(said.release.reasons.map(({ code, kind, values }) => ({ code, kind, values }))).toEqual(
      plan.release.reasons,
    )
  },
)

test('a file is answered in the system it is written in', () => {
  expect(unitsOfFile(demoDocument('dense-sand-road'))).toBe('si')
  expect(unitsOfFile(demoDocument('firm-clay-service'))).toBe('us')
  expect(unitsOfFile({ units: 'si', line: { length: '42 ft' } })).toBe('si')
  expect(unitsOfFile(null)).toBe('us')
})
