// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { NOUN_FILES } from '../../shared/contracts/noun-files.ts'
import { toolCard } from '../../shared/core/shop/tool-card.ts'
import { shopDemo } from '../../src/store/demo-shop.ts'
import { demoId } from '../../src/store/seed-demo.ts'
import { gapOfCoins } from '../../web/shop/coin-words.ts'
import { documentOf, emptyDraft, questionKey, questionsOf } from '../../web/shop/inspection-draft.ts'
import { InspectionForm } from '../../web/shop/inspection-form.tsx'
import { shopView } from '../../web/shop/shop-facts.ts'
import type { ShopDocuments } from '../../web/shop/shop-store.ts'
import { editedOf, templateDocument } from '../../web/shop/template-draft.ts'

const TODAY = '2026-03-02'
const demo = shopDemo(new Date(`${TODAY}T09:00:00Z`), demoId)
const entries = (noun: string): ShopDocuments['tools'] =>
  demo
    .filter((each) => each.noun === noun)
    .map(({ key, document }) => ({
      id: demoId(key),
      version: 1,
      demo: true,
      document: JSON.parse(JSON.stringify(document)),
    }))
const plan = { hammerS: 2400, lengthM: 12, advanceMPerS: 0.01, blowRateHz: 6, oiled: true }
const documents: ShopDocuments = {
  tools: entries('tools'),
  'tool-templates': entries('tool-templates'),
  parts: entries('parts'),
  inspections: entries('inspections'),
  'bore-logs': entries('bore-logs'),
  days: entries('days'),
  crossings: Object.fromEntries(
    ['firm-clay-service.json', 'short-side-water.json', 'dense-sand-road.json', 'irrigation-sleeve.json'].map(
      (file) => [demoId(file), { ...plan, name: file }],
    ),
  ),
}
const view = shopView(documents, [], TODAY)
const toolNamed = (name: string) => {
  const found = view.tools.find(({ file }) => file.name.startsWith(name))
  if (found === undefined) throw new Error(name)
  return found
}
const cardOf = (name: string) => {
  const tool = toolNamed(name)
  const facts = view.toolFacts.find(({ id }) => id === tool.entry.id)
  if (facts === undefined) throw new Error(name)
  return toolCard(facts, view.toolFacts, view.factsOf(tool.entry.id))
}

describe('the invented shop', () => {
  test('a failed tilt test and spent seals hold a tool; a worn ring only says when', () => {
    expect(cardOf('No. 2').holds.map(({ code }) => code)).toEqual(['tilt-failed', 'replace'])
    expect(view.isHeld(toolNamed('No. 2').entry.id)).toBe(true)
    expect(view.isHeld(toolNamed('No. 1').entry.id)).toBe(false)
    const one = cardOf('No. 1')
    expect(one.holds).toEqual([])
    const rings = one.parts.find(({ key }) => key === 'striker-rings')
    expect(rings?.forecast.count).toBe(2)
    expect(rings?.dueBefore).not.toBeNull()
    expect(rings?.orderBy).not.toBeNull()
    // Nothing of this kind has ended yet: that is said, not guessed.
    expect(one.parts.find(({ key }) => key === 'hose-end')?.forecast.p50S).toBeNull()
  })

  test('a sheet that waits in this browser counts, and counts once when the server has it too', () => {
    const waits = {
      id: '00000000-0000-4000-8000-00000000000f',
      photos: [],
      document: { name: 'x', tool: toolNamed('No. 3').entry.id, on: TODAY, by: 'Ada', tiltAfter: 'failed' },
    }
    const inspections = [
      ...documents.inspections,
      { id: waits.id, version: 1, demo: false, document: waits.document },
    ]
    expect(shopView(documents, [waits], TODAY).sheets).toHaveLength(view.sheets.length + 1)
    expect(shopView({ ...documents, inspections }, [waits], TODAY).sheets).toHaveLength(
      view.sheets.length + 1,
    )
  })
})

describe('a sheet', () => {
  const tool = toolNamed('No. 1')
  const draft = { ...emptyDraft(TODAY), by: 'Ada' }

  test('coins, bare numbers in the unit of the label, and what they become in the file', () => {
    expect(gapOfCoins('2 quarters')).toBeCloseTo(0.0035, 12)
    expect(gapOfCoins('2 mm')).toBeNull()
    const values = { 'striker-rings.end-gap': '2 quarters', 'striker-rings.stands-out': '0.02' }
    const document = documentOf(tool, { ...draft, values }, 'in')
    expect(document.readings).toEqual([
      { part: 'striker-rings', key: 'stands-out', value: '0.508 mm' },
      { part: 'striker-rings', key: 'end-gap', value: '3.5 mm' },
    ])
    expect(NOUN_FILES.inspections.safeParse(document).success).toBe(true)
  })

  test('asks what it does not believe, until a person says so', () => {
    const values = { 'striker-rings.end-gap': '0.06 in' }
    const asked = questionsOf(tool, view, { ...draft, values }, 'in')
    expect(asked.map(({ code }) => code)).toEqual(['below-last'])
    const confirmed = asked.map(questionKey)
    expect(questionsOf(tool, view, { ...draft, values, confirmed }, 'in')).toEqual([])
    const later = questionsOf(tool, view, { ...draft, on: '2026-03-03' }, 'in')
    expect(later.map(({ code }) => code)).toEqual(['future-date'])
  })

  test('the door refuses a negative gap with a question', () => {
    const document = documentOf(tool, draft, 'in')
    const negative = { ...document, readings: [{ part: 'striker-rings', key: 'end-gap', value: '-1 mm' }] }
    expect(NOUN_FILES.inspections.safeParse(negative).success).toBe(false)
  })

  beforeEach(() => localStorage.clear())
  afterEach(cleanup)
  test('judges while it is typed, and keeps what was typed', () => {
    const { unmount } = render(<InspectionForm tool={tool} view={view} />)
    fireEvent.input(screen.getByLabelText('end gap, by feeler (in)'), { target: { value: '0.2' } })
    expect(screen.getAllByText('replace').length).toBeGreaterThan(0)
    unmount()
    render(<InspectionForm tool={tool} view={view} />)
    expect(screen.getByDisplayValue('0.2')).toBeTruthy()
  })
})

test('a list that was only opened is saved as it was, and the generic one is one the server takes', () => {
  const own = toolNamed('No. 1')
  const saved = templateDocument(editedOf(own))
  expect(NOUN_FILES['tool-templates'].parse(saved)).toEqual(
    NOUN_FILES['tool-templates'].parse(own.templateEntry?.document),
  )
  const generic = templateDocument(editedOf(toolNamed('No. 3')))
  expect(NOUN_FILES['tool-templates'].safeParse(generic).success).toBe(true)
})
