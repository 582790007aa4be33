import { relation } from '../relation.ts'

/** Mass of a pipe from its least wall; polyethylene is extruded about 6 % heavier than the least wall. */
export const pipeMass = relation({
  id: 'pipe-mass',
  title: 'Mass of a pipe',
  formula: 'm = ρ·π·t·(D − t)·L with t = wall·allowance',
  sources: ['PipeArithmetic', 'AstmB88'],
  inputs: {
    outsideDiameter: {
      kind: 'diameter',
      words: 'outside diameter',
      range: { min: 0.002, max: 0.4, hardMin: 0, hardMax: 3 },
    },
    wall: { kind: 'diameter', words: 'wall', range: { min: 0.0002, max: 0.05, hardMin: 0, hardMax: 1 } },
    length: { kind: 'length', words: 'length', range: { min: 0, max: 300, hardMin: 0, hardMax: 1e5 } },
    density: {
      kind: 'density',
      words: 'density; polyethylene 955, copper 8 940, steel 7 850 kg/m³',
      range: { min: 900, max: 9000, hardMin: 0, hardMax: 25000 },
      default: 955,
    },
    wallAllowance: {
      kind: 'ratio',
      words: 'average wall over the wall given',
      range: { min: 1, max: 1.2, hardMin: 0.5, hardMax: 2 },
      default: 1.06,
    },
  },
  outputs: { mass: { kind: 'mass', words: 'mass of the pipe' } },
  fn: ({ outsideDiameterM, wallM, lengthM, densityKgPerM3, wallAllowance }) => {
    const thicknessM = Math.min(wallM * wallAllowance, outsideDiameterM / 2)
    return { massKg: densityKgPerM3 * Math.PI * thicknessM * (outsideDiameterM - thicknessM) * lengthM }
  },
  checks: ['pipe-handling'],
})
