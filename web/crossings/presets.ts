import type { JsonObject } from '../state/json.ts'
import type { EN_FORM } from '../words/form-words.ts'

type Preset = { readonly id: keyof (typeof EN_FORM)['start']['jobs']; readonly document: JsonObject }

const AIR: JsonObject = {
  compressor: { freeAirDelivery: '185 cfm', pressure: '100 psi' },
  hoses: [{ bore: '3/4 in', length: '50 ft' }],
  lubricator: true,
}
const SCHEMA = 'underlane/crossing@1'

/** Nothing said of anything: only the places where it will be said. */
export const EMPTY_CROSSING: JsonObject = {
  schema: SCHEMA,
  line: {},
  depth: {},
  ground: [{}],
  pipes: [{}],
  tool: {},
  air: { compressor: {}, hoses: [{}] },
}

/**
 * Usual jobs to start from. None of them says anything of other lines or of a ticket: those are asked for each job,
 * so a crossing started here is held until they are.
 */
export const PRESETS: readonly Preset[] = [
  {
    id: 'short-side-water',
    document: {
      schema: SCHEMA,
      name: 'Short-side water service',
      line: { length: '28 ft' },
      depth: { launch: '42 in', reception: '42 in', to: 'top' },
      over: [{ from: '2 ft', to: '26 ft', kind: 'road' }],
      ground: [{ word: 'clay loam', stones: 'few' }],
      pipes: [{ system: 'copper-b88', size: '3/4', wall: 'K', coilLength: '60 ft' }],
      tool: { diameter: '2 in' },
      air: AIR,
      rates: 'example',
    },
  },
  {
    id: 'duct-run',
    document: {
      schema: SCHEMA,
      name: 'Duct run along a frontage',
      line: { length: '180 ft' },
      depth: { launch: '30 in', reception: '30 in', to: 'centre' },
      shots: [{ to: '36 ft' }, { to: '72 ft' }, { to: '108 ft' }, { to: '144 ft' }, { to: '180 ft' }],
      over: [
        { from: '0 ft', to: '52 ft', kind: 'lawn' },
        { from: '52 ft', to: '68 ft', kind: 'drive' },
        { from: '68 ft', to: '112 ft', kind: 'lawn' },
        { from: '112 ft', to: '128 ft', kind: 'drive' },
        { from: '128 ft', to: '180 ft', kind: 'lawn' },
      ],
      ground: [{ word: 'loam' }],
      pipes: [{ system: 'hdpe-conduit', size: '1-1/4', sdr: 13.5, count: 2 }],
      tool: { diameter: '4 in' },
      air: { ...AIR, hoses: [{ bore: '1 in', length: '100 ft' }] },
      rates: 'example',
    },
  },
  {
    id: 'irrigation-sleeve',
    document: {
      schema: SCHEMA,
      name: 'Irrigation sleeve under the walk',
      line: { length: '8 ft' },
      depth: { launch: '18 in', reception: '18 in', to: 'centre' },
      over: [{ from: '18 in', to: '6 ft 6 in', kind: 'walk' }],
      ground: [{ word: 'sandy loam' }],
      pipes: [{ system: 'hdpe-ips', size: '1', sdr: 11 }],
      tool: { diameter: '2 in' },
      air: AIR,
      rates: 'example',
    },
  },
  {
    id: 'curb-to-cellar',
    document: {
      schema: SCHEMA,
      name: 'Curb to cellar wall',
      line: { length: '33 ft' },
      depth: { launch: '5 ft', reception: '5 ft', to: 'centre' },
      ends: { reception: { kind: 'wall', footingDepth: '6 ft 6 in' } },
      over: [{ from: '0 ft', to: '33 ft', kind: 'lawn' }],
      ground: [{ word: 'clay', dug: 'firm' }],
      pipes: [{ system: 'copper-b88', size: '1', wall: 'K' }],
      tool: { diameter: '2-1/2 in' },
      air: AIR,
      rates: 'example',
    },
  },
  {
    id: 'sewer-on-grade',
    document: {
      schema: SCHEMA,
      name: 'Sewer lateral on grade',
      line: { length: '50 ft' },
      depth: { launch: '6 ft 6 in', reception: '5 ft 5-1/2 in', to: 'centre' },
      grade: '1/4" per ft',
      ground: [{ word: 'sandy clay' }],
      pipes: [{ system: 'pvc-sewer', size: '4', wall: 'SDR35' }],
      tool: { diameter: '5-1/2 in' },
      air: { ...AIR, hoses: [{ bore: '1 in', length: '100 ft' }] },
      rates: 'example',
    },
  },
  {
    id: 'fibre-drop',
    document: {
      schema: SCHEMA,
      name: 'Fiber drop',
      line: { length: '24 ft' },
      depth: { launch: '24 in', reception: '24 in', to: 'centre' },
      over: [{ from: '8 ft', to: '20 ft', kind: 'drive' }],
      ground: [{ word: 'loam' }],
      pipes: [{ outsideDiameter: '3/4 in' }],
      tool: { diameter: '2 in' },
      air: AIR,
      rates: 'example',
    },
  },
]

/** What a new page holds: the shortest of the usual jobs. */
export const FIRST_PRESET: JsonObject = PRESETS[0]?.document ?? {}
