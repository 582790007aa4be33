import { relation } from '../relation.ts'
import { between } from './between.ts'

const DEGREE_RAD = Math.PI / 180
const PECK = [
  [0, 27],
  [4, 29],
  [10, 30],
  [30, 36],
  [50, 41],
] as const
const MEYERHOF = [
  [0, 27],
  [4, 30],
  [10, 35],
  [30, 40],
  [50, 45],
] as const
/** Kulhawy and Mayne write their formula with the atmosphere of 101.325 kPa. */
const ATMOSPHERE_PA = 101_325

function angleDeg(n: number, method: string, verticalStressPa: number): number {
  switch (method) {
    case 'kulhawy-mayne':
      return Math.atan((n / (12.2 + (20.3 * verticalStressPa) / ATMOSPHERE_PA)) ** 0.34) / DEGREE_RAD
    case 'hatanaka-uchida':
      return Math.sqrt(15.4 * n) + 20
    case 'shioi-fukui-root':
      return Math.sqrt(15 * n) + 15
    case 'shioi-fukui-straight':
      return 0.3 * n + 27
    case 'peck':
      return between(n, PECK)
    case 'meyerhof':
      return between(n, MEYERHOF)
    default:
      return 27.1 + 0.3 * n - 0.00054 * n * n
  }
}

/**
 * Friction angle of sand from SPT N, rad. N is N1,60 (energy and depth corrected), for Kulhawy & Mayne N60 with the effective
 * vertical stress beside it. Wolff 1989: φ = 27.1 + 0.3 N − 0.00054 N² degrees, ±3° or so.
 * Kulhawy & Mayne overestimates at shallow depth (47° at 18 kPa): not below 1.5 m of cover.
 */
export const sptFrictionAngle = relation({
  id: 'spt-friction-angle',
  title: 'Friction angle of sand from SPT N',
  formula: 'Wolff: φ = 27.1 + 0.3 N − 0.00054 N² (degrees)',
  sources: ['Ufc322010', 'ShioiFukui1982', 'PeckHansonThornburn1974', 'Meyerhof1956'],
  inputs: {
    sptN: {
      kind: 'count',
      words: 'SPT blow count N1,60 (N60 for Kulhawy & Mayne)',
      range: { min: 2, max: 60, hardMin: 0, hardMax: 200 },
    },
    method: {
      choices: [
        'wolff',
        'kulhawy-mayne',
        'hatanaka-uchida',
        'shioi-fukui-root',
        'shioi-fukui-straight',
        'peck',
        'meyerhof',
      ],
      words: 'correlation',
      default: 'wolff',
    },
    verticalStress: {
      kind: 'stress',
      words: 'effective vertical stress (Kulhawy & Mayne only)',
      range: { min: 25e3, max: 500e3, hardMin: 0 },
      default: 100e3,
    },
  },
  outputs: { frictionAngle: { kind: 'angle', words: 'friction angle' } },
  fn: ({ sptN, method, verticalStressPa }) => ({
    frictionAngleRad: angleDeg(sptN, method, verticalStressPa) * DEGREE_RAD,
  }),
  checks: ['ground-spt'],
})
