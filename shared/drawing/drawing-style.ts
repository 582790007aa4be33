import { curveRules } from './curve-rules.ts'

/** Each colour with the name the page may set; the light value is what paper and a file by itself get. */
const COLOURS = {
  paper: ['--sheet', '#fffdf7'],
  ink: ['--ink', '#1b2831'],
  soft: ['--soft', '#4c5a63'],
  rule: ['--rule', '#cfc9b8'],
  bore: ['--mark', '#14506e'],
  bad: ['--hold', '#9c2318'],
  check: ['--check', '#7a4b00'],
  earth: ['--drawing-earth', '#f1e7d3'],
  change: ['--drawing-change', '#8d6a3d'],
  hard: ['--drawing-hard', '#c9c6bd'],
  grass: ['--drawing-grass', '#5c7a3a'],
  water: ['--drawing-water', '#1f6fb2'],
  yellow: ['--apwa-yellow', '#f2c800'],
  red: ['--apwa-red', '#d42a1e'],
  orange: ['--apwa-orange', '#f07d12'],
  blue: ['--apwa-blue', '#1f6fc4'],
  purple: ['--apwa-purple', '#7d3fa0'],
  green: ['--apwa-green', '#2c8c45'],
  white: ['--mark-white', '#ffffff'],
  brown: ['--mark-brown', '#7a4a21'],
  grey: ['--apwa-none', '#7b858b'],
} as const
type ColourName = keyof typeof COLOURS

const MARK_COLOURS: readonly ColourName[] = [
  'yellow',
  'red',
  'orange',
  'blue',
  'purple',
  'green',
  'white',
  'brown',
  'grey',
]

/**
 * The rules all drawings share. 'page': colours by the page's own variables, so its theme decides. 'file': plain light
 * colours, for readers that know no variables.
 */
export function drawingStyle(place: 'page' | 'file'): string {
  const c = (name: ColourName): string => {
    const [variable, light] = COLOURS[name]
    return place === 'file' ? light : `var(${variable}, ${light})`
  }
  const rules: readonly (readonly [string, string])[] = [
    [
      '',
      'font-family:"DejaVu Sans","Segoe UI","Helvetica Neue",Arial,sans-serif;font-variant-numeric:tabular-nums',
    ],
    ['.sheet', `fill:${c('paper')}`],
    [
      '.words',
      `fill:${c('ink')};stroke:${c('paper')};stroke-width:3px;stroke-linejoin:round;paint-order:stroke`,
    ],
    ['.quiet', `fill:${c('soft')}`],
    ['.heading', 'font-weight:600'],
    ['.bad', `fill:${c('bad')};font-weight:600`],
    ['.earth', `fill:${c('earth')}`],
    ['.void', `fill:${c('paper')}`],
    ['.ground-line', `fill:none;stroke:${c('ink')};stroke-width:2px;stroke-linejoin:round`],
    ['.cut', `fill:none;stroke:${c('ink')};stroke-width:1.5px`],
    ['.shore', `fill:none;stroke:${c('ink')};stroke-width:3px`],
    ['.hard', `fill:${c('hard')};stroke:${c('ink')};stroke-width:.75px`],
    ['.hatch', `fill:none;stroke:${c('soft')};stroke-width:1px`],
    ['.grass', `fill:none;stroke:${c('grass')};stroke-width:1px`],
    ['.masonry', `fill:${c('hard')};stroke:${c('ink')};stroke-width:1.5px`],
    ['.separator', `fill:none;stroke:${c('change')};stroke-width:1px;stroke-dasharray:7 4`],
    ['.groundwater', `fill:none;stroke:${c('water')};stroke-width:1.5px;stroke-dasharray:9 4`],
    ['.water-mark', `fill:${c('paper')};stroke:${c('water')};stroke-width:1.5px`],
    [
      '.envelope',
      `fill:${c('bore')};fill-opacity:.14;stroke:${c('bore')};stroke-width:1px;stroke-dasharray:4 3`,
    ],
    ['.bore', `fill:${c('bore')};stroke:none`],
    ['.bore-line', `fill:none;stroke:${c('bore')};stroke-width:1.5px;stroke-dasharray:5 4`],
    ['.likely-path', `fill:none;stroke:${c('ink')};stroke-width:1.25px;stroke-dasharray:2 3`],
    ['.look', `fill:${c('paper')};stroke:${c('ink')};stroke-width:1.75px`],
    ['.look.overruled', `stroke:${c('soft')};stroke-dasharray:2 2`],
    ['.look-bar', `fill:none;stroke:${c('ink')};stroke-width:1.25px`],
    ['.dimension', `fill:none;stroke:${c('ink')};stroke-width:1px`],
    ['.arrow', `fill:${c('ink')};stroke:none`],
    ['.pole', `fill:none;stroke:${c('soft')};stroke-width:1px`],
    ['.gap-short', `fill:none;stroke:${c('bad')};stroke-width:2px`],
    ['.frame', `fill:none;stroke:${c('rule')};stroke-width:1px`],
    ['.glyph path', `fill:currentColor;stroke:${c('ink')};stroke-width:1px;stroke-linejoin:round`],
    ['.utility', `fill:currentColor;stroke:${c('ink')};stroke-width:1px`],
    ['.utility.unproved', 'stroke-dasharray:3 2'],
    ['.utility-line', 'fill:none;stroke:currentColor'],
    ['.utility-edge', `fill:none;stroke:${c('ink')}`],
    ['.doubt', 'fill:currentColor;fill-opacity:.22;stroke:none'],
    ['.stop', 'stop-color:currentColor'],
    ['.bar', `fill:${c('bore')}`],
    ['.bar-low', `fill:${c('bad')}`],
    ['.bar-high', `fill:${c('check')}`],
    ['.limit', `fill:none;stroke:${c('ink')};stroke-width:2px`],
    ...curveRules(c),
    ...MARK_COLOURS.map((name) => [`.mark-${name}`, `color:${c(name)}`] as const),
  ]
  // The drawing's own colours in the dark; what the page names for itself it also darkens.
  const dark =
    place === 'file'
      ? ''
      : '\n@media screen and (prefers-color-scheme: dark){.underlane-drawing{--drawing-earth:#2b2a22;--drawing-hard:#4a5056;--drawing-change:#c79a5e;--drawing-grass:#8fb56a;--drawing-water:#6db3ea}}'
  const light = rules
    .map(([selector, body]) => `${`.underlane-drawing ${selector}`.trim()}{${body}}`)
    .join('\n')
  return light + dark
}
