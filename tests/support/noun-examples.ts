import type { PlainNoun } from '../../shared/contracts/noun-files.ts'
import { EXAMPLE_RATE_BOOK } from '../../shared/tables/example-rate-book.ts'

/** What the examples belong to, and their day. */
export const OTHER = '00000000-0000-4000-8000-000000000002'
export const DAY = '2026-03-02'

/** One document of each, as a person would write it. */
export const EXAMPLES: Readonly<Record<PlainNoun, Record<string, unknown>>> = {
  jobs: {
    name: 'Alder Road',
    customer: OTHER,
    on: DAY,
    crossings: [OTHER],
    notes: 'gate code at the office',
  },
  customers: { name: 'Town water', email: 'water@example.com' },
  tools: {
    name: 'Old 3 in',
    diameter: '3 in',
    airDemand: '60 cfm',
    ratedPressure: '100 psi',
    head: 'stepped',
    stroke: '150 mm',
    template: OTHER,
    complaint: { on: DAY, words: 'slow in clay' },
  },
  compressors: {
    name: 'Tow-behind',
    freeAirDelivery: '185 cfm',
    pressure: '7 bar',
    unloadPressure: '8.5 bar',
    engine: 'turbo',
    receiver: '60 L',
    oiler: { loss: '2 psi', at: '185 cfm' },
  },
  hoses: {
    name: 'Blue',
    bore: '3/4 in',
    length: '50 ft',
    ratedPressure: '300 psi',
    lossFactor: 1.3,
    measuredOn: DAY,
  },
  crews: { name: 'North', people: [OTHER] },
  people: { name: 'Ada', crew: OTHER },
  'rate-books': { ...EXAMPLE_RATE_BOOK },
  quotes: {
    name: 'Alder Road, first',
    job: OTHER,
    on: DAY,
    state: 'sent',
    currency: 'USD',
    quotedMinorUnits: 185000,
  },
  days: {
    name: 'Monday',
    on: DAY,
    crew: OTHER,
    crossings: [OTHER],
    tools: [{ crossing: OTHER, tool: OTHER }],
  },
  'bore-logs': {
    name: 'Shot 1',
    crossing: OTHER,
    on: DAY,
    shot: 1,
    outcome: 'arrived',
    length: '42 ft',
    hammerTime: '18 min',
    tool: OTHER,
    pressure: '98 psi',
    abrasivity: 3,
    oil: 'good',
    air: 'dry',
  },
  'sign-offs': { name: 'Marks seen', crossing: OTHER, on: DAY, layer: 'bore', by: 'Ada' },
  attachments: {
    name: 'marks.jpg',
    of: OTHER,
    mediaType: 'image/jpeg',
    byteCount: 4,
    sha256: 'a'.repeat(64),
  },
  settings: { name: 'The firm', units: 'us', language: 'es', currency: 'USD' },
  'tool-templates': {
    name: 'Ours',
    stripEvery: '80 h',
    parts: [
      {
        key: 'striker-rings',
        name: 'Long rings',
        group: 'seals',
        driver: 'sliding',
        torque: '40 ft-lb',
        leadDays: 14,
        measures: [
          { key: 'end-gap', measure: 'end-gap', nominal: '0.5 mm', limit: '3 mm', error: '0.05 mm' },
        ],
      },
    ],
  },
  parts: {
    name: 'Ring set 7',
    key: 'striker-rings',
    tool: OTHER,
    fitted: [{ tool: OTHER, on: DAY }],
  },
  inspections: {
    name: 'Old 3 in',
    tool: OTHER,
    on: DAY,
    by: 'Ada',
    steps: ['outside', 'tilt-before'],
    tiltBefore: 'passed',
    stripped: true,
    readings: [
      { part: 'striker-rings', key: 'end-gap', value: '1.75 mm' },
      { part: 'seals', key: 'seal', grade: 'worn' },
    ],
    replaced: ['seals'],
    confirmed: ['striker-rings.end-gap'],
  },
}
