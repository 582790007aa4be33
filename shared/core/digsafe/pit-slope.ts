import { relation } from '../relation.ts'

/** Run per rise of the steepest side each class may have, under 20 ft; class A stands at 1/2:1 for 24 h to 12 ft. */
const RUN_PER_RISE = { rock: 0, A: 0.75, 'A-short': 0.5, B: 1, C: 1.5 } as const

/**
 * The steepest allowed side of a pit by OSHA soil class. Ground nobody has classed is C; a launch pit is never A, because
 * it sits in disturbed ground beside a hammering tool.
 */
export const pitSlope = relation({
  id: 'pit-slope',
  title: 'Steepest side of a pit',
  formula: 'rock vertical, A 3/4:1, B 1:1, C 1-1/2:1 (run per rise); angle = atan(1/run)',
  sources: ['OshaSubpartPAppendixB'],
  inputs: {
    soilType: {
      choices: ['rock', 'A', 'B', 'C', 'A-short'],
      words: 'OSHA soil class; A-short is class A open for 24 h at most and to 12 ft',
    },
  },
  outputs: {
    angle: { kind: 'angle', words: 'angle of the side from level' },
    runPerRise: { kind: 'ratio', words: 'run per rise' },
  },
  fn: ({ soilType }) => {
    const runPerRise = RUN_PER_RISE[soilType]
    return { angleRad: Math.atan2(1, runPerRise), runPerRise }
  },
  checks: ['pits'],
  remarks:
    'Under 20 ft only. A competent person classes the soil; signs of distress flatten the side by 1/2:1.',
})
