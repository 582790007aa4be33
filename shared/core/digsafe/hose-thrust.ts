import { relation } from '../relation.ts'

/** Push on the end of a hose that comes off under pressure: what a whip check has to hold, at the least. */
export const hoseThrust = relation({
  id: 'hose-thrust',
  title: 'Push of a hose that comes off',
  formula: 'F = p·π·d²/4',
  sources: ['ExactIdentity'],
  inputs: {
    bore: {
      kind: 'diameter',
      words: 'bore of the hose',
      range: { min: 0.006, max: 0.06, hardMin: 0, hardMax: 1 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure in it',
      range: { min: 0, max: 1_000_000, hardMin: 0, hardMax: 1e8 },
    },
  },
  outputs: { force: { kind: 'force', words: 'pressure times bore area, at rest' } },
  fn: ({ boreM, pressureGaugePa }) => ({ forceN: (pressureGaugePa * Math.PI * boreM ** 2) / 4 }),
  checks: ['hose-thrust'],
  remarks:
    'At rest. The jerk of a hose let go, and the whip of its end, are more: a restraint is rated by its maker.',
})
