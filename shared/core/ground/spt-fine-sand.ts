import { relation } from '../relation.ts'

/** Above this count pore pressure in fine saturated sand holds the sampler up. */
const THRESHOLD = 15

/** Blow count in fine or silty saturated sand, corrected: N' = 15 + 0.5 (N − 15) above 15. UFC 3-220-10 eq. 8-1. */
export const sptFineSand = relation({
  id: 'spt-fine-sand',
  title: 'SPT correction in fine saturated sand',
  formula: "N' = 15 + 0.5 (N − 15) for N > 15, else N",
  sources: ['Ufc322010'],
  inputs: { sptN: { kind: 'count', words: 'SPT blow count N', range: { min: 0, max: 60, hardMin: 0 } } },
  outputs: { corrected: { kind: 'count', words: 'corrected blow count' } },
  fn: ({ sptN }) => ({ corrected: sptN > THRESHOLD ? THRESHOLD + 0.5 * (sptN - THRESHOLD) : sptN }),
  checks: ['ground-spt'],
})
