import type { MeasureSpec, PartSpec, ToolTemplate } from '../core/shop/template.ts'

/**
 * A tool as any of its kind is made up, and what is looked at on each part: common practice, no source. It holds no
 * size, no torque and no time: those are the tool's own, and its owner enters them from its own manual.
 */
const look = (measure: MeasureSpec['measure'], key: string = measure): MeasureSpec => ({
  key,
  measure,
  nominalM: null,
  limitM: null,
  errorM: null,
})

const part = (
  key: string,
  group: PartSpec['group'],
  driver: PartSpec['driver'],
  measures: readonly MeasureSpec[],
): PartSpec => ({ key, name: null, group, driver, torque: null, leadDays: null, measures })

export const GENERIC_TOOL_TEMPLATE: ToolTemplate = {
  name: 'generic',
  stripEveryS: null,
  parts: [
    part('body', 'outside', 'ground', [look('diameter'), look('crack')]),
    part('head', 'outside', 'ground', [look('diameter'), look('crack')]),
    part('striker', 'striking', 'blows', [look('crack'), look('face')]),
    part('striker-rings', 'seals', 'sliding', [look('stands-out'), look('end-gap'), look('groove')]),
    part('striker-bushing', 'seals', 'sliding', [look('side-play')]),
    part('seals', 'seals', 'valve', [look('seal')]),
    part('valve-stem', 'air-control', 'valve', [look('length'), look('side-play')]),
    part('valve-rings', 'air-control', 'valve', [look('stands-out'), look('end-gap')]),
    part('rear-closure', 'rear', 'blows', [look('face'), look('crack')]),
    part('body-thread', 'threads', 'blows', [look('thread')]),
    part('tail-thread', 'threads', 'blows', [look('thread')]),
    part('hose-end', 'hose', 'hose', [look('hose'), look('thread')]),
  ],
}
