import { relation } from '../relation.ts'
import { clayTipPa } from './tip-pressure.ts'

/**
 * Pressure on the nose in undrained clay, Pa: q = σv + k su [(4/3)(1 + ln Ir) + a cot 30°], with σv the total vertical stress and
 * a the adhesion on the nose over su. k = 1.8 brings (q − σv)/su to 14.5–15.4, the published mean cone factor (10–19).
 */
export const tipResistanceClay = relation({
  id: 'tip-resistance-clay',
  title: 'Pressure on the nose in clay',
  formula: 'q = σv + k su [(4/3)(1 + ln Ir) + a cot 30°]',
  sources: ['PenetrationModel', 'BishopHillMott1945', 'Ufc322010'],
  inputs: {
    undrainedStrength: {
      kind: 'stress',
      words: 'undrained strength',
      range: { min: 5e3, max: 400e3, hardMin: 0 },
    },
    rigidityIndex: { kind: 'ratio', words: 'rigidity index G/su', range: { min: 40, max: 300, hardMin: 1 } },
    verticalStress: {
      kind: 'stress',
      words: 'total vertical stress',
      range: { min: 5e3, max: 100e3, hardMin: 0 },
    },
    adhesion: {
      kind: 'ratio',
      words: 'adhesion on the nose over undrained strength',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 1 },
      default: 0.5,
    },
    tipFactor: {
      kind: 'ratio',
      words: 'calibration factor of the nose',
      range: { min: 1, max: 3, hardMin: 0 },
      default: 1.8,
    },
  },
  outputs: { tipPressure: { kind: 'stress', words: 'pressure on the nose' } },
  fn: (given) => ({
    tipPressurePa: clayTipPa(
      given.undrainedStrengthPa,
      given.rigidityIndex,
      given.verticalStressPa,
      given.adhesion,
      given.tipFactor,
    ),
  }),
  checks: ['ground-penetration'],
})
