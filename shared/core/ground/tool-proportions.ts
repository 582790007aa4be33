import { relation } from '../relation.ts'

const REFERENCE_M = 0.045
const STEEL_KG_PER_M3 = 7850
const SECONDS_PER_MINUTE = 60
/** Share of a solid steel cylinder of the same outside. */
const SOLID_SHARE = 0.62
const STRIKER_SHARE = 0.22
/** The recoil acts through this part of the stroke. */
const STROKE_SHARE = 0.85

/**
 * Proportions of a piercing tool by body diameter D at 6.5 bar at the tool, where its data sheet is not at hand; r = D/45 mm.
 * E = 20 r^2.2 J, f = 9.2 r^−0.4 Hz, L = 1.00 r^0.55 m, mass 0.62 of a solid steel cylinder, striker 0.22 of it,
 * stroke 0.080 r^0.55 m, mean recoil E/(0.85 stroke), free air 0.45 r^1.8 m³/min. Averages, ±15–25 % at best.
 */
export const toolProportions = relation({
  id: 'tool-proportions',
  title: 'Proportions of a tool by its body diameter',
  formula:
    'r = D/45 mm: E = 20 r^2.2 J, f = 9.2 r^−0.4 Hz, L = r^0.55 m, m = 0.62 ρ π D² L/4, m1 = 0.22 m, stroke = 0.080 r^0.55 m, F = E/(0.85 stroke), air = 0.45 r^1.8 m³/min',
  sources: ['MolingClassAverages'],
  inputs: {
    diameter: {
      kind: 'diameter',
      words: 'body diameter',
      range: { min: 0.04, max: 0.2, hardMin: 0.01, hardMax: 1 },
    },
  },
  outputs: {
    blowEnergy: { kind: 'energy', words: 'energy of a blow' },
    blowRate: { kind: 'frequency', words: 'blows per second' },
    length: { kind: 'length', words: 'body length' },
    mass: { kind: 'mass', words: 'mass of the tool' },
    strikerMass: { kind: 'mass', words: 'mass of the striker' },
    stroke: { kind: 'movement', words: 'stroke of the striker' },
    recoil: { kind: 'force', words: 'mean recoil' },
    freeAir: { kind: 'volumeFlow', words: 'free air' },
  },
  fn: ({ diameterM }) => {
    const r = diameterM / REFERENCE_M
    const blowEnergyJ = 20 * r ** 2.2
    const lengthM = r ** 0.55
    const strokeM = 0.08 * r ** 0.55
    const massKg = SOLID_SHARE * STEEL_KG_PER_M3 * (Math.PI / 4) * diameterM * diameterM * lengthM
    return {
      blowEnergyJ,
      blowRateHz: 9.2 * r ** -0.4,
      lengthM,
      massKg,
      strikerMassKg: STRIKER_SHARE * massKg,
      strokeM,
      recoilN: blowEnergyJ / (STROKE_SHARE * strokeM),
      freeAirM3PerS: (0.45 * r ** 1.8) / SECONDS_PER_MINUTE,
    }
  },
  checks: ['ground-penetration'],
  remarks: 'No maker’s data. A figure from the data sheet of the tool in hand replaces each of these.',
})
