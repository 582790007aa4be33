import { relation } from '../relation.ts'
import { BODY_SHARE } from './tip-pressure.ts'

/**
 * Friction on the body, Pa: clay a su; sand and soils with friction rf q · 0.6, q the pressure on the nose.
 * a and rf by soil state; the 0.6 because the hole is a little wider than the body behind the shoulder.
 */
export const shaftFriction = relation({
  id: 'shaft-friction',
  title: 'Friction on the body of the tool',
  formula: 'clay: fs = a su; granular: fs = 0.6 rf q',
  sources: ['PenetrationModel'],
  inputs: {
    soil: { choices: ['clay', 'granular'], words: 'clay, or soil with friction' },
    base: {
      kind: 'stress',
      words: 'undrained strength (clay) or pressure on the nose (granular)',
      range: { min: 5e3, max: 10e6, hardMin: 0 },
    },
    share: {
      kind: 'ratio',
      words: 'adhesion factor (clay) or friction ratio (granular)',
      range: { min: 0.003, max: 0.5, hardMin: 0, hardMax: 1 },
    },
  },
  outputs: { friction: { kind: 'stress', words: 'friction on the body' } },
  fn: ({ soil, basePa, share }) => ({ frictionPa: (soil === 'clay' ? 1 : BODY_SHARE) * share * basePa }),
  checks: ['ground-penetration'],
})
