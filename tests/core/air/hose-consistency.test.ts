import { describe, expect, it } from 'vitest'
import { hoseFrictionLoss } from '../../../shared/core/air/hose-friction-loss.ts'
import { HOSE_CELLS, type HoseCell } from './hose-friction-table.ts'

const PSI_PA = 6894.757293168361
const CFM_M3_PER_S = 0.3048 ** 3 / 60
const SIZES = ['3/4', '1', '1-1/4', '1-1/2']

/** Smooth wall, no coupling term: the closest there is to a table that is no friction law. */
const lossPsi = ({ boreIn, linePsi, cfm }: HoseCell): number =>
  hoseFrictionLoss.fn({
    boreM: boreIn * 0.0254,
    lengthM: 50 * 0.3048,
    freeAirM3PerS: cfm * CFM_M3_PER_S,
    pressureGaugePa: linePsi * PSI_PA,
    altitudeM: 0,
    temperatureK: 294.26,
    roughnessM: 0,
    couplings: 0,
  }).lossPa / PSI_PA

describe('the hose table of the handbooks, a consistency check and no validation', () => {
  const cells = HOSE_CELLS.filter(({ size, linePsi }) => SIZES.includes(size) && linePsi >= 80)
  const within = (cell: HoseCell, psi: number, share: number) =>
    Math.abs(lossPsi(cell) - cell.lossPsi) <= Math.max(psi, share * cell.lossPsi) + 1e-9

  it('has the cells of 3/4 to 1-1/2 in at 80 to 110 psi', () => expect(cells).toHaveLength(121))

  it('has at least 95 % of them inside 0.15 psi or 25 %', () => {
    const inside = cells.filter((cell) => within(cell, 0.15, 0.25)).length
    expect(inside / cells.length).toBeGreaterThanOrEqual(0.95)
  })

  it('has none outside 0.25 psi or 45 %', () => {
    expect(cells.filter((cell) => !within(cell, 0.25, 0.45))).toEqual([])
  })
})
