import { describe, expect, test } from 'vitest'
import { type CrossingDocument, demoDocument, planOf } from '../../support/crossings.ts'

const BASE = demoDocument('short-side-water')
const idsOf = (change: CrossingDocument) => planOf({ ...BASE, ...change }).checklist.map((item) => item.id)
const line = (change: CrossingDocument): CrossingDocument => ({
  utilities: [
    { station: '14 ft', depth: '8 ft', depthTo: 'top', diameter: '2 in', evidence: 'exposed', ...change },
  ],
})
const AIR = BASE.air as CrossingDocument

/** What a condition brings onto the list, and that it is not there without it. */
const CONDITIONS: readonly (readonly [string, CrossingDocument, readonly string[]])[] = [
  [
    'gas crossed',
    line({ kind: 'gas' }),
    ['gas-hand-exposed', 'gas-compressor-upwind', 'gas-engines-asked', 'gas-separation'],
  ],
  ['power crossed', line({ kind: 'electric' }), ['power-owner-asked', 'power-crew-briefed']],
  ['telecom crossed', line({ kind: 'telecom' }), ['fibre-hand-exposed']],
  ['sewer crossed', line({ kind: 'sewer' }), ['sewer-and-laterals-found', 'water-sewer-apart']],
  ['sewer proved another way', line({ kind: 'sewer', evidence: 'proved' }), ['sewer-proved-another-way']],
  ['a line overhead', { overhead: [{ station: '10 ft', kilovolts: 12 }] }, ['plant-off-overhead']],
  [
    'cold',
    { air: { ...AIR, temperature: '30 F' } },
    ['antifreeze-oil', 'marks-in-snow', 'frost-not-shoring'],
  ],
  ['a pit of 4 ft', { depth: { launch: '4 ft', reception: '4 ft', to: 'floor' } }, ['ladder', 'air-tested']],
  ['a pit of 5 ft', { depth: { launch: '5 ft', reception: '5 ft', to: 'floor' } }, ['slope-shore-shield']],
  ['a pit of 6 ft', { depth: { launch: '6 ft', reception: '6 ft', to: 'floor' } }, ['pit-edge-guarded']],
  ['the tool reversed home', { pull: 'reverse' }, ['reverse-proved']],
]
const SHALLOW = { depth: { launch: '3 ft', reception: '3 ft', to: 'floor' } }

describe('the check list by condition', () => {
  test.each(CONDITIONS)('%s', (_name, change, ids) => {
    const found = idsOf(change)
    expect(ids.filter((id) => !found.includes(id))).toEqual([])
    const without = idsOf(SHALLOW)
    expect(ids.filter((id) => without.includes(id))).toEqual([])
  })

  test('some things are looked at before every bore', () => {
    const always = [
      'ticket-on-sheet',
      'trenchless-said',
      'owners-answered',
      'private-lines-asked',
      'emergency-card',
      'whip-restraints',
      'bleed-before-opening',
      'exit-pit-empty-until-bled',
      'hose-tape-zero',
    ]
    expect(always.filter((id) => !idsOf(SHALLOW).includes(id))).toEqual([])
  })

  test('no item stands twice', () => {
    const ids = idsOf({ ...line({ kind: 'gas' }), overhead: [{}], pull: 'reverse' })
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([])
  })
})

describe('plant under a line overhead', () => {
  test.each([
    [12, 10],
    [50, 10],
    [51, 15],
    [230, 20],
    [500, 25],
    [700, 35],
    [765, 45],
    [undefined, 20],
  ])('%s kV: %i ft', (kilovolts, feet) => {
    const overhead = [kilovolts === undefined ? { station: '3 ft' } : { station: '3 ft', kilovolts }]
    const found = planOf({ ...BASE, overhead }).cautions.find((each) => each.id === 'line-overhead')
    expect(found?.values.overheadM).toBeCloseTo(feet * 0.3048, 9)
  })
})
