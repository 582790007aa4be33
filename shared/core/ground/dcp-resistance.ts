import { relation } from '../relation.ts'

/** The source rounds gravity so; the third digit of the energy depends on it. */
const GRAVITY_M_PER_S2 = 9.81
const MM_PER_M = 1e3

/**
 * What a hand cone penetrometer says: energy of its blow, area of its cone, dynamic resistance qd = E/(A DPI) in Pa, and the
 * California bearing ratio by CBR % = 292/DPI^1.12 (DPI in mm per blow). ASTM D6951 geometry: 8 kg, 575 mm, cone 20 mm.
 */
export const dcpResistance = relation({
  id: 'dcp-resistance',
  title: 'Resistance from a hand cone penetrometer',
  formula: 'qd = m g h/(A DPI); CBR % = 292/DPI^1.12, DPI in mm',
  sources: ['AstmD6951'],
  inputs: {
    penetration: {
      kind: 'resistancePerBlow',
      words: 'penetration per blow',
      range: { min: 0.002, max: 0.1, hardMin: 1e-4 },
    },
    hammerMass: {
      kind: 'mass',
      words: 'mass of the hammer',
      range: { min: 4.6, max: 8, hardMin: 0.1 },
      default: 8,
    },
    drop: {
      kind: 'length',
      words: 'fall of the hammer',
      range: { min: 0.5, max: 0.6, hardMin: 0.01 },
      default: 0.575,
    },
    coneDiameter: {
      kind: 'diameter',
      words: 'diameter of the cone',
      range: { min: 0.015, max: 0.03, hardMin: 0.001 },
      default: 0.02,
    },
  },
  outputs: {
    energy: { kind: 'energy', words: 'energy of a blow' },
    coneArea: { kind: 'area', words: 'area of the cone' },
    dynamicResistance: { kind: 'stress', words: 'dynamic cone resistance' },
    bearingRatio: { kind: 'ratio', words: 'California bearing ratio, as a fraction' },
  },
  fn: ({ penetrationM, hammerMassKg, dropM, coneDiameterM }) => {
    const energyJ = hammerMassKg * GRAVITY_M_PER_S2 * dropM
    const coneAreaM2 = (Math.PI / 4) * coneDiameterM * coneDiameterM
    return {
      energyJ,
      coneAreaM2,
      dynamicResistancePa: energyJ / (coneAreaM2 * penetrationM),
      bearingRatio: 292 / (penetrationM * MM_PER_M) ** 1.12 / 100,
    }
  },
  checks: ['ground-penetration'],
})
