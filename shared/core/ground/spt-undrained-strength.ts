import { relation } from '../relation.ts'
import { between } from './between.ts'

const PA_PER_KPA = 1e3
/** Terzaghi & Peck: unconfined strength at the band limits, halved. 6.25 N up to N = 8; the table rounds up at 15 and 30. */
const BAND_LIMITS = [
  [0, 0],
  [2, 12.5],
  [4, 25],
  [8, 50],
  [15, 100],
  [30, 200],
] as const
const LAST_N = 30

function strengthKpa(n: number, method: string): number {
  switch (method) {
    case 'linear':
      return 6.25 * n
    case 'stroud-medium-plasticity':
      return 4.5 * n
    case 'stroud-low-plasticity':
      return 6.5 * n
    case 'hara':
      return 29 * n ** 0.72
    default:
      // Past the table the last limit's share per blow goes on.
      return n > LAST_N ? (200 / LAST_N) * n : between(n, BAND_LIMITS)
  }
}

/**
 * Undrained strength of clay from SPT N, Pa: 6.25 N kPa, exact at the limits of Terzaghi & Peck's consistency bands
 * (12.5/25/50/100/200 kPa at N 2/4/8/15/30) and straight in between. Scatter is wide: a factor 2 either way.
 * Other methods as published: 6.25 N throughout; Stroud 4.5 N and 6.5 N (middles of his bands); Hara 29 N^0.72, an upper bound.
 */
export const sptUndrainedStrength = relation({
  id: 'spt-undrained-strength',
  title: 'Undrained strength of clay from SPT N',
  formula: 'su = 6.25 N kPa at N 2, 4, 8; 100 kPa at 15, 200 kPa at 30; straight in between',
  sources: ['TerzaghiPeck', 'Stroud1974', 'Hara1974'],
  inputs: {
    sptN: { kind: 'count', words: 'SPT blow count N', range: { min: 2, max: 60, hardMin: 0, hardMax: 200 } },
    method: {
      choices: ['terzaghi-peck', 'linear', 'stroud-medium-plasticity', 'stroud-low-plasticity', 'hara'],
      words: 'correlation',
      default: 'terzaghi-peck',
    },
  },
  outputs: { undrainedStrength: { kind: 'stress', words: 'undrained strength' } },
  fn: ({ sptN, method }) => ({ undrainedStrengthPa: strengthKpa(sptN, method) * PA_PER_KPA }),
  checks: ['ground-spt'],
  remarks: 'Pages that give about 12.5 N as the strength quote the unconfined strength, twice this.',
})
