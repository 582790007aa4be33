import { relation } from '../relation.ts'
import { granularTipFactor } from './tip-pressure.ts'

const DEGREE_RAD = Math.PI / 180

/**
 * Pressure on the nose in sand or in soil with cohesion and friction, Pa: q = k p (1 + tan δ cot 30°), p the limit pressure of a
 * sphere, δ the friction angle of soil on steel. k = 2.2 (1.7 would follow the cone formula of Baldi 1986), times 1.3 in gravelly soil.
 */
export const tipResistanceGranular = relation({
  id: 'tip-resistance-granular',
  title: 'Pressure on the nose in soil with friction',
  formula: 'q = k g p (1 + tan δ cot 30°)',
  sources: ['PenetrationModel', 'YuHoulsby1991'],
  inputs: {
    limitPressure: {
      kind: 'stress',
      words: 'limit pressure of a sphere',
      range: { min: 50e3, max: 5e6, hardMin: 0 },
    },
    interfaceAngle: {
      kind: 'angle',
      words: 'friction angle of soil on steel',
      range: { min: 10 * DEGREE_RAD, max: 30 * DEGREE_RAD, hardMin: 0, hardMax: 45 * DEGREE_RAD },
    },
    tipFactor: {
      kind: 'ratio',
      words: 'calibration factor of the nose',
      range: { min: 1.5, max: 3, hardMin: 0 },
      default: 2.2,
    },
    gravelFactor: {
      kind: 'ratio',
      words: 'extra factor, 1.3 in gravelly soil',
      range: { min: 1, max: 1.5, hardMin: 0 },
      default: 1,
    },
  },
  outputs: { tipPressure: { kind: 'stress', words: 'pressure on the nose' } },
  fn: ({ limitPressurePa, interfaceAngleRad, tipFactor, gravelFactor }) => ({
    tipPressurePa: granularTipFactor(interfaceAngleRad, tipFactor, gravelFactor) * limitPressurePa,
  }),
  checks: ['ground-penetration'],
})
