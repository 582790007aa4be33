import { relation } from '../relation.ts'

/** Bore over pipe, and the gap left all round. The society's guideline asks 1.15 to 1.25; small pipe is judged by the gap. */
export const oversizeRatio = relation({
  id: 'oversize-ratio',
  title: 'Bore over pipe',
  formula: 'ratio = B/D; gap = (B − D)/2',
  sources: ['IsttImpactMoling'],
  inputs: {
    bore: {
      kind: 'diameter',
      words: 'diameter of the bore',
      range: { min: 0.03, max: 0.3, hardMin: 0, hardMax: 3 },
    },
    pipe: {
      kind: 'diameter',
      words: 'outside diameter of the pipe or bundle',
      range: { min: 0.003, max: 0.3, hardMin: 0.0001, hardMax: 3 },
    },
  },
  outputs: {
    ratio: { kind: 'ratio', words: 'bore over pipe' },
    radialGap: { kind: 'diameter', words: 'gap all round; negative when the pipe does not pass' },
  },
  fn: ({ boreM, pipeM }) => ({ ratio: boreM / pipeM, radialGapM: (boreM - pipeM) / 2 }),
  checks: ['pipe-handling'],
})
