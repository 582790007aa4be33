import { describe, expect, test } from 'vitest'
import { axisDepthOf } from '../../../shared/core/plan/bore-line.ts'
import { planOf, planOfDemo } from '../../support/crossings.ts'

/** Worked by hand from the geometry; lengths in metres. */
const BASE = {
  name: 'A bench for geometry',
  units: 'si',
  line: { length: 10 },
  depth: { launch: 1.2, reception: 1.2, to: 'centre' },
  ground: [{ uscs: 'CL', sptN: 6, stones: 'none' }],
  pipes: [{ outsideDiameter: 0.05 }],
  tool: { diameter: 0.075 },
  air: {
    compressor: { freeAirDelivery: 0.0873, pressure: 690000 },
    hoses: [{ bore: 0.025, length: 30 }],
  },
}

describe('a depth is measured to something', () => {
  const sizes = { boreDiameterM: 0.1, cradleM: 0.09 }
  test('to the centre it is the axis', () => expect(axisDepthOf(1, 'centre', sizes)).toBe(1))
  test('to the top the axis lies half a bore lower', () =>
    expect(axisDepthOf(1, 'top', sizes)).toBeCloseTo(1.05, 12))
  test('to the bottom half a bore higher', () =>
    expect(axisDepthOf(1, 'bottom', sizes)).toBeCloseTo(0.95, 12))
  test('to the floor half a bore and the cradle higher', () =>
    expect(axisDepthOf(1, 'floor', sizes)).toBeCloseTo(0.86, 12))
})

test('level ground, level bore: cover is depth less half the bore, everywhere', () => {
  const { bore } = planOf(BASE)
  expect(bore.coverM).toBeCloseTo(1.2 - 0.0375, 9)
  expect(bore.coverRatio).toBeCloseTo((1.2 - 0.0375) / 0.075, 9)
})

test('the least cover is found under a ditch between the pits', () => {
  const { bore } = planOf({
    ...BASE,
    surface: [
      { station: 0, level: 0 },
      { station: 4, level: 0 },
      { station: 5, level: -0.5 },
      { station: 6, level: 0 },
      { station: 10, level: 0 },
    ],
  })
  expect(bore.coverM).toBeCloseTo(0.7 - 0.0375, 9)
  expect(bore.coverAtM).toBe(5)
})

test('on a slope depths are below local ground: the bore follows the slope and cover stays', () => {
  const { bore } = planOf({
    ...BASE,
    surface: [
      { station: 0, level: 100 },
      { station: 10, level: 101 },
    ],
  })
  expect(bore.coverM).toBeCloseTo(1.2 - 0.0375, 9)
})

test('a middle depth nobody gave is interpolated and listed', () => {
  const plan = planOf({
    ...BASE,
    depth: { launch: 1, reception: 2, to: 'centre' },
    shots: [{ to: 4 }, { to: 10 }],
  })
  expect(plan.shots.map((shot) => [shot.depthFromM, shot.depthToM])).toEqual([
    [1, expect.closeTo(1.4, 9)],
    [expect.closeTo(1.4, 9), 2],
  ])
  expect(plan.assumptions.map((each) => each.name)).toContain('shots.0.depth')
})

test('shots share their middle pits: two shots, three pits, one of them in the middle', () => {
  const plan = planOf({ ...BASE, shots: [{ to: 5 }, { to: 10 }] })
  expect(plan.pits.map((pit) => pit.serves)).toEqual(['launch', 'middle', 'reception'])
})

test('drift is zeroed at every pit: two shots of half the length wander less than one', () => {
  const one = planOf(BASE).deviation.lateralM.p90
  const two = planOf({ ...BASE, shots: [{ to: 5 }, { to: 10 }] }).deviation.lateralM.p90
  expect(two).toBeLessThan(one / 2)
})

test('the bundle decides, not one duct: two of 50 mm are 100 mm and do not pass a 95 mm tool', () => {
  expect(() =>
    planOf({ ...BASE, tool: { diameter: 0.095 }, pipes: [{ outsideDiameter: 0.05, count: 2 }] }),
  ).toThrow('pipe-does-not-pass')
})

test('positions give the length on the ellipsoid: a hundred-thousandth of a degree of latitude is 1.11 m', () => {
  const plan = planOf({ ...BASE, line: { launch: [8, 47], reception: [8, 47.0001] } })
  expect(plan.bore.lengthM).toBeCloseTo(11.117, 2)
})

test('a pit’s floor lies under the axis by half the tool, the cradle and the sump; 4 ft asks a ladder, 5 ft a box', () => {
  const at = (depth: number) =>
    planOf({ ...BASE, depth: { launch: depth, reception: depth, to: 'centre' } }).pits[0]
  const floor = at(1)?.floorDepthM ?? 0
  expect(floor).toBeCloseTo(1 + 0.0375 + 3.5 * 0.0254 + 0.05, 9)
  const below = floor - 1
  expect(at(1.2192 - below - 0.001)?.needsLadder).toBe(false)
  expect(at(1.2192 - below + 0.001)?.needsLadder).toBe(true)
  expect(at(1.524 - below - 0.001)?.needsProtection).toBe(false)
  expect(at(1.524 - below + 0.001)?.needsProtection).toBe(true)
})

test('a coil must hold bore and tails', () => {
  const pipe = planOfDemo('short-side-water').pipes[0]
  expect(pipe?.coilNeededM).toBeCloseTo((28 + 10) * 0.3048, 9)
})
