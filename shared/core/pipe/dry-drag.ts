import { relation } from '../relation.ts'

const GRAVITY_M_PER_S2 = 9.80665

/** Pull needed to drag a pipe along an open bore by its weight alone. A bore that closes on the pipe costs far more. */
export const dryDrag = relation({
  id: 'dry-drag',
  title: 'Drag of the pipe in an open bore',
  formula: 'F = m·g·μ',
  sources: ['PipeArithmetic'],
  inputs: {
    mass: {
      kind: 'mass',
      words: 'mass of the pipe pulled',
      range: { min: 0, max: 2000, hardMin: 0, hardMax: 1e6 },
    },
    friction: {
      kind: 'ratio',
      words: 'friction of pipe on soil',
      range: { min: 0.1, max: 1, hardMin: 0, hardMax: 5 },
      default: 0.5,
    },
  },
  outputs: { force: { kind: 'force', words: 'pull to keep it moving' } },
  fn: ({ massKg, friction }) => ({ forceN: massKg * GRAVITY_M_PER_S2 * friction }),
  checks: ['pipe-handling'],
  remarks: 'An open, standing bore. What breaks pipe is a bore that has closed: hence the weak link.',
})
