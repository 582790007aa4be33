import { relation } from '../relation.ts'
import { sandLimit } from './sand-limit.ts'

const DEGREE_RAD = Math.PI / 180

/**
 * Strength of sand by relative density, solved together with the pressure it is expanded to.
 * φ = φcv + 3° I, ψ = (φ − φcv)/0.8, I = Dr (10 − ln √(p p0)) − 1 held in 0…4 (kPa), G = 0.3 Gmax, E = 2.5 G, ν = 0.25.
 * p is the limit pressure of a sphere (Yu & Houlsby 1991). Bolton 1986; extrapolated at the 5–20 kPa of a shallow bore.
 */
export const sandStrength = relation({
  id: 'sand-strength',
  title: 'Friction and dilation of sand by density and stress',
  formula:
    'φ = φcv + 3° I, ψ = (φ − φcv)/0.8, I = Dr (10 − ln √(p p0)) − 1 in 0…4; G = 0.3·625 √(101.3 p0)/(0.3 + 0.7 e²) kPa',
  sources: ['Bolton1986', 'HardinModulus', 'YuHoulsby1991'],
  inputs: {
    relativeDensity: {
      kind: 'ratio',
      words: 'relative density',
      range: { min: 0.05, max: 0.98, hardMin: 0, hardMax: 1 },
    },
    criticalAngle: {
      kind: 'angle',
      words: 'friction angle at constant volume',
      range: {
        min: 29 * DEGREE_RAD,
        max: 38 * DEGREE_RAD,
        hardMin: 15 * DEGREE_RAD,
        hardMax: 45 * DEGREE_RAD,
      },
    },
    meanStress: {
      kind: 'stress',
      words: 'mean effective stress in the ground',
      range: { min: 3e3, max: 100e3, hardMin: 100 },
    },
  },
  outputs: {
    dilatancyIndex: { kind: 'ratio', words: 'relative dilatancy index' },
    frictionAngle: { kind: 'angle', words: 'peak friction angle' },
    dilationAngle: { kind: 'angle', words: 'dilation angle' },
    shearModulus: { kind: 'stress', words: 'shear modulus' },
    limitPressure: { kind: 'stress', words: 'limit pressure of a sphere' },
  },
  fn: ({ relativeDensity, criticalAngleRad, meanStressPa }) =>
    sandLimit(relativeDensity, criticalAngleRad, meanStressPa),
  checks: ['ground-penetration'],
})
