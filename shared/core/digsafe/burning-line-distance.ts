import { relation } from '../relation.ts'

const INCH_M = 0.0254
const FOOT_M = 0.3048
/** One pound-force per square inch in pascals: 0.45359237 kg × 9.80665 m/s² over (0.0254 m)². */
const PSI_PA = (0.45359237 * 9.80665) / INCH_M ** 2
/** 100 m or 330 ft all around, whatever the line: initial isolation of the emergency guide. */
const ISOLATION_FT = 330

/** How far people stay from a gas line that burns, or may: the larger of the guide's isolation and the formula. */
export const burningLineDistance = relation({
  id: 'burning-line-distance',
  title: 'Distance from a burning gas line',
  formula: 'x ft = 2.28·D in·√(p psig); kept: the larger of x and 330 ft',
  sources: ['PipelineEmergencyGuide', 'DotErg115'],
  inputs: {
    bore: {
      kind: 'diameter',
      words: 'inside diameter of the gas line',
      range: { min: 0.0127, max: 1.2192, hardMin: 0, hardMax: 3 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'its gauge pressure',
      range: { min: 0, max: 10_342_136, hardMin: 0, hardMax: 1e8 },
    },
  },
  outputs: {
    formula: { kind: 'length', words: 'by the formula alone' },
    keep: { kind: 'length', words: 'keep everyone at least this far, all around' },
  },
  fn: ({ boreM, pressureGaugePa }) => {
    // The guide's formula is in inches, pounds per square inch and feet.
    const feet = 2.28 * (boreM / INCH_M) * Math.sqrt(pressureGaugePa / PSI_PA)
    return { formulaM: feet * FOOT_M, keepM: Math.max(ISOLATION_FT, feet) * FOOT_M }
  },
  checks: ['burning-line'],
  remarks: 'For gas, not for liquids, and not for a blast. The fire service and the owner decide on site.',
})
