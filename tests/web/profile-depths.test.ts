import { describe, expect, test } from 'vitest'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'
import { longSection } from '../../shared/drawing/long-section.ts'
import { parseQuantity } from '../../shared/quantities/parse-quantity.ts'
import { PRESETS } from '../../web/crossings/presets.ts'
import {
  type DepthHandle,
  depthAfterKey,
  depthHandles,
  depthText,
  snappedDepthM,
} from '../../web/profile/depth-handles.ts'
import { notesOf, sectionFootPx } from '../../web/profile/section-alone.ts'
import { scrollToKeep, zoomAfterKey, zoomAfterWheel } from '../../web/profile/zoom.ts'
import { withValue } from '../../web/state/document-path.ts'
import type { JsonObject } from '../../web/state/json.ts'

const SYSTEMS = ['us', 'si'] as const

function drawn(document: JsonObject) {
  const input = parseCrossing(document)
  if (!input.ok) throw new Error(JSON.stringify(input.issues))
  const plan = planCrossing(input.value)
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues))
  const section = longSection(input.value, plan.value, { system: 'us', lang: 'en', widthPx: 1000 })
  return { input: input.value, plan: plan.value, section }
}

function handlesOf(document: JsonObject): readonly DepthHandle[] {
  const { input, plan, section } = drawn(document)
  return depthHandles(input, section.line, plan.bore.diameterM / 2)
}
const water = PRESETS[0]?.document ?? {}
const first = (document: JsonObject): DepthHandle => {
  const [handle] = handlesOf(document)
  if (handle === undefined) throw new Error('no handle')
  return handle
}

describe('depths by hand', () => {
  test.each(SYSTEMS)('every step is written so that it reads back as itself (%s)', (system) => {
    const anywhere = { shallowestM: 0.05, deepestM: 15 }
    for (let wantedM = 0; wantedM < 16; wantedM += 0.0037) {
      const depthM = snappedDepthM(wantedM, anywhere, system)
      const read = parseQuantity(depthText(depthM, system), 'depth', { bare: 'refuse' })
      if (!read.ok) throw new Error(depthText(depthM, system))
      expect(Math.abs(read.valueSi - depthM)).toBeLessThan(1e-9)
      expect(Math.abs(depthM - Math.min(15, Math.max(0.05, wantedM)))).toBeLessThan(0.0128)
    }
  })

  test.each(['top', 'centre', 'bottom', 'floor'])('to the %s: from end to end it can be planned', (to) => {
    const document = withValue(water, 'depth.to', to)
    for (const system of SYSTEMS) {
      for (const key of ['Home', 'End']) {
        const depthM = depthAfterKey(key, first(document), system)
        const text = depthText(depthM ?? Number.NaN, system)
        const next = withValue(withValue(document, 'depth.launch', text), 'depth.reception', text)
        const read = first(next)
        expect(read.givenM).toBeCloseTo(depthM ?? Number.NaN, 9)
      }
    }
  })

  test('an arrow goes to the next mark of the tape even from between two, and stops at the ends', () => {
    const handle = { ...first(water), givenM: 1.003 }
    expect(depthAfterKey('ArrowDown', handle, 'si')).toBeCloseTo(1.01, 9)
    expect(depthAfterKey('ArrowUp', handle, 'si')).toBeCloseTo(1, 9)
    expect(depthAfterKey('PageUp', handle, 'si')).toBeCloseTo(0.9, 9)
    expect(depthAfterKey('ArrowDown', { ...handle, givenM: 15 }, 'si')).toBeCloseTo(15, 9)
    expect(depthAfterKey('a', handle, 'si')).toBeNull()
  })

  test('a middle depth is offered to the datum of the file', () => {
    const [, pit] = handlesOf({
      ...water,
      depth: { launch: '42 in', reception: '42 in', to: 'top' },
      shots: [{ to: '14 ft', depth: '4 ft' }, { to: '28 ft' }],
    })
    expect(pit).toMatchObject({ path: 'shots.0.depth', end: 'middle', number: 1 })
    expect(pit?.givenM).toBeCloseTo(4 * 0.3048, 9)
  })
})

describe('zoom', () => {
  test('goes in and out between fitted and most, and back to fitted', () => {
    expect(zoomAfterKey('+', 1)).toBe(1.5)
    expect(zoomAfterKey('-', 1)).toBe(1)
    expect(zoomAfterKey('+', 8)).toBe(8)
    expect(zoomAfterKey('0', 4)).toBe(1)
    expect(zoomAfterKey('x', 4)).toBeNull()
    expect(zoomAfterWheel(-100, 1)).toBe(1.5)
    expect(zoomAfterWheel(5000, 8)).toBeCloseTo(5.33, 9)
  })

  test('the place under the pointer stays there', () => {
    // 300 px into a drawing, seen at 100 px: twice as large it is at 600, still seen at 100.
    expect(scrollToKeep(200, 100, 2)).toBe(500)
    // With 80 px over it that do not grow: 220 px below them, then 440.
    expect(scrollToKeep(200, 100, 2, 80)).toBe(420)
  })
})

test('the section alone ends under its lengths, and what the drawing says of safety is not folded with the rest', () => {
  const { section } = drawn(water)
  const foot = sectionFootPx(section.tree)
  expect(foot).toBeGreaterThan(section.frame.bottomPx)
  expect(foot).toBeLessThan(Number(section.tree.attributes.height) - 100)
  expect(notesOf(section.tree)).toContain('Nobody has been asked about utilities')
})
