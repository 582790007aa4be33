import { relation } from '../relation.ts'

/**
 * Room a pipe needs to come down from grade to the depth of the bore without bending under its radius: one arc that meets
 * the bore at an angle, or two equal arcs that leave it level. Deeper than the arcs reach, the rest is straight down.
 */
export const pipeLeadIn = relation({
  id: 'pipe-lead-in',
  title: 'Lead-in of the pipe',
  formula: 'one arc L = √(2Rh − h²), angle acos(1 − h/R); S-curve L = √(4Rh − h²), angle acos(1 − h/2R)',
  sources: ['PipeArithmetic'],
  inputs: {
    radius: {
      kind: 'length',
      words: 'least bend radius',
      range: { min: 0.1, max: 20, hardMin: 0.001, hardMax: 1000 },
    },
    depth: {
      kind: 'depth',
      words: 'depth to come down',
      range: { min: 0, max: 5, hardMin: 0, hardMax: 100 },
    },
    form: { choices: ['arc', 's-curve'], words: 'one arc, or two that leave it level', default: 'arc' },
  },
  outputs: {
    length: { kind: 'length', words: 'level distance it takes' },
    angle: { kind: 'angle', words: 'steepest angle from level' },
  },
  fn: ({ radiusM, depthM, form }) => {
    const arcs = form === 'arc' ? 1 : 2
    const dropM = Math.min(depthM / arcs, radiusM)
    return {
      lengthM: arcs * Math.sqrt(2 * radiusM * dropM - dropM ** 2),
      angleRad: Math.acos(1 - dropM / radiusM),
    }
  },
  checks: ['pipe-handling'],
})
