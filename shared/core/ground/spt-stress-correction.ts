import { relation } from '../relation.ts'

const ATMOSPHERE_PA = 101_325

/**
 * Factor CN that brings a blow count taken at shallow depth to one atmosphere of effective stress: N1,60 = CN N60.
 * CN = √(pa/σv'), capped: at 1 m it would be 2.4. Liao & Whitman 1986.
 */
export const sptStressCorrection = relation({
  id: 'spt-stress-correction',
  title: 'SPT correction for depth',
  formula: "CN = min(cap, √(pa/σv'))",
  sources: ['LiaoWhitman1986'],
  inputs: {
    verticalStress: {
      kind: 'stress',
      words: 'effective vertical stress',
      range: { min: 5e3, max: 300e3, hardMin: 1 },
    },
    cap: {
      kind: 'ratio',
      words: 'largest factor allowed (1.7 is safer)',
      range: { min: 1.5, max: 2, hardMin: 1 },
      default: 2,
    },
  },
  outputs: { factor: { kind: 'ratio', words: 'factor on N60' } },
  fn: ({ verticalStressPa, cap }) => ({ factor: Math.min(cap, Math.sqrt(ATMOSPHERE_PA / verticalStressPa)) }),
  checks: ['ground-spt'],
})
