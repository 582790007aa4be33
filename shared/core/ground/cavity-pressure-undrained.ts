import { relation } from '../relation.ts'

/**
 * Limit pressure of a cavity grown from nothing in undrained clay, Pa, and plastic radius over cavity radius.
 * su undrained strength, G shear modulus, Ir = G/su, p0 mean total stress in the ground.
 * Exact for an elastic, perfectly plastic (Tresca) soil of constant volume in an infinite body.
 * Gibson & Anderson 1961 (cylinder), Bishop, Hill & Mott 1945 (sphere).
 */
export const cavityPressureUndrained = relation({
  id: 'cavity-pressure-undrained',
  title: 'Cavity limit pressure, undrained clay',
  formula:
    'cylinder: p = p0 + su (1 + ln Ir), Rp/a = Ir^(1/2); sphere: p = p0 + (4/3) su (1 + ln Ir), Rp/a = Ir^(1/3); Ir = G/su',
  sources: ['GibsonAnderson1961', 'BishopHillMott1945'],
  inputs: {
    undrainedStrength: {
      kind: 'stress',
      words: 'undrained strength of the clay',
      range: { min: 5e3, max: 400e3, hardMin: 1 },
    },
    shearModulus: { kind: 'stress', words: 'shear modulus', range: { min: 200e3, max: 100e6, hardMin: 1 } },
    insituStress: {
      kind: 'stress',
      words: 'mean total stress in the ground',
      range: { min: 0, max: 100e3, hardMin: 0 },
    },
    shape: { choices: ['cylinder', 'sphere'], words: 'shape of the cavity' },
  },
  outputs: {
    limitPressure: { kind: 'stress', words: 'limit pressure' },
    plasticRadiusRatio: { kind: 'ratio', words: 'plastic radius over cavity radius' },
  },
  fn: ({ undrainedStrengthPa, shearModulusPa, insituStressPa, shape }) => {
    const rigidityIndex = shearModulusPa / undrainedStrengthPa
    const sphere = shape === 'sphere'
    return {
      limitPressurePa:
        insituStressPa + (sphere ? 4 / 3 : 1) * undrainedStrengthPa * (1 + Math.log(rigidityIndex)),
      plasticRadiusRatio: sphere ? Math.cbrt(rigidityIndex) : Math.sqrt(rigidityIndex),
    }
  },
  checks: ['ground-cavity'],
})
