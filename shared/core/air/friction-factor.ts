import { relation } from '../relation.ts'
import { darcyFrictionFactor, FRICTION_METHODS } from './friction-methods.ts'

/**
 * Darcy friction factor of a round pipe or hose.
 *
 * 1/√f = −2 log10( ε/(3.7 D) + 2.51/(Re √f) )   for Re > 4000;   f = 64/Re   below 2300
 * Re Reynolds number, ε/D wall roughness over bore, f Darcy factor (four times Fanning's); none has a unit.
 * Error: Colebrook solved to the last digits; against pipes a few percent. The explicit forms: see friction-methods.
 */
export const frictionFactor = relation({
  id: 'friction-factor',
  title: 'Darcy friction factor',
  formula: '1/√f = −2·log10(ε/(3.7·D) + 2.51/(Re·√f)); f = 64/Re below Re 2300',
  sources: ['Colebrook1939', 'Serghides1984', 'Haaland1983', 'SwameeJain1976', 'Churchill1977'],
  inputs: {
    reynolds: {
      kind: 'ratio',
      words: 'Reynolds number',
      range: { min: 4000, max: 1e8, hardMin: 1, hardMax: 1e12 },
    },
    relativeRoughness: {
      kind: 'ratio',
      words: 'wall roughness over bore',
      range: { min: 0, max: 0.05, hardMin: 0, hardMax: 0.25 },
    },
    method: { choices: FRICTION_METHODS, words: 'formula', default: 'colebrook' },
  },
  outputs: { frictionFactor: { kind: 'ratio', words: 'Darcy friction factor' } },
  fn: ({ reynolds, relativeRoughness, method }) => ({
    frictionFactor: darcyFrictionFactor(reynolds, relativeRoughness, method),
  }),
  checks: ['open-library-air-points', 'cengel-friction-examples'],
  remarks:
    'Between Re 2300 and 4000 the flow may be laminar or turbulent: the turbulent value is given, which is the higher. ' +
    'Below 2300 all methods but Churchill, whose curve covers every regime, give 64/Re.',
})
