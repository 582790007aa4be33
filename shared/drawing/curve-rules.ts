type Colour = (name: 'ink' | 'bore' | 'rule' | 'paper') => string

/** How curves over axes look, and the band on a bar. */
export const curveRules = (c: Colour): readonly (readonly [string, string])[] => [
  ['.band', `fill:none;stroke:${c('ink')};stroke-width:1.5px`],
  ['.axis', `fill:none;stroke:${c('ink')};stroke-width:1px`],
  ['.rule', `fill:none;stroke:${c('rule')};stroke-width:1px`],
  ['.curve', `fill:none;stroke:${c('bore')};stroke-width:2px`],
  ['.curve-other', 'stroke-dasharray:6 4'],
  ['.curve-thin', `stroke:${c('ink')};stroke-width:1px`],
  ['.curve-band', `fill:${c('bore')};fill-opacity:.16;stroke:none`],
  ['.spot', `fill:${c('paper')};stroke:${c('ink')};stroke-width:2px`],
]
