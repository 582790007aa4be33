import type { PlainNoun } from '../../shared/contracts/noun-files.ts'
import { writeDay } from '../../shared/core/digsafe/civil.ts'
import type { NamedDocument } from './nouns.ts'

export type DemoDocument = {
  readonly noun: PlainNoun
  readonly key: string
  readonly document: NamedDocument
}

const MS_PER_DAY = 86_400_000

/** Days of bores, by how long ago they were; every figure here is invented. */
const BORED: readonly (readonly [daysAgo: number, feet: number, minutes: number])[] = [
  [80, 38, 26],
  [76, 44, 31],
  [71, 30, 19],
  [64, 52, 44],
  [58, 36, 25],
  [51, 41, 30],
  [44, 47, 35],
  [36, 33, 24],
  [29, 40, 33],
  [22, 28, 22],
  [15, 45, 41],
  [8, 37, 35],
]

const COMPARABLE = 'firm-clay-service.json'
const PLANNED = [
  'firm-clay-service.json',
  'short-side-water.json',
  'dense-sand-road.json',
  'irrigation-sleeve.json',
]

/** The list of one invented tool: sizes no maker printed. */
const LIST = {
  name: 'Three-inch tools',
  stripEvery: '100 h',
  parts: [
    {
      key: 'body',
      group: 'outside',
      driver: 'ground',
      measures: [
        { key: 'diameter', measure: 'diameter', nominal: '3 in', limit: '2.85 in' },
        { key: 'crack', measure: 'crack' },
      ],
    },
    { key: 'striker', group: 'striking', driver: 'blows', measures: [{ key: 'face', measure: 'face' }] },
    {
      key: 'striker-rings',
      group: 'seals',
      driver: 'sliding',
      leadDays: 10,
      measures: [
        { key: 'stands-out', measure: 'stands-out', nominal: '0.040 in', limit: '0 in' },
        { key: 'end-gap', measure: 'end-gap', nominal: '0.020 in', limit: '0.150 in' },
        { key: 'groove', measure: 'groove' },
      ],
    },
    {
      key: 'seals',
      group: 'seals',
      driver: 'valve',
      leadDays: 5,
      measures: [{ key: 'seal', measure: 'seal' }],
    },
    {
      key: 'valve-stem',
      group: 'air-control',
      driver: 'valve',
      measures: [{ key: 'length', measure: 'length', nominal: '9 in' }],
    },
    {
      key: 'tail-thread',
      group: 'threads',
      driver: 'blows',
      torque: '300 ft-lb (invented)',
      measures: [{ key: 'thread', measure: 'thread' }],
    },
    { key: 'hose-end', group: 'hose', driver: 'hose', measures: [{ key: 'hose', measure: 'hose' }] },
  ],
}

type Day = (daysFromNow: number) => string

function tools(day: Day, idOf: (key: string) => string): readonly DemoDocument[] {
  const shared = { template: idOf('tool-list'), ratedPressure: '100 psi', blowRate: '6 Hz', stroke: '6 in' }
  return [
    { noun: 'tool-templates', key: 'tool-list', document: LIST },
    {
      noun: 'tools',
      key: 'tool-one',
      document: { name: 'No. 1, 3 in', serial: 'A-101', diameter: '3 in', ...shared },
    },
    {
      noun: 'tools',
      key: 'tool-two',
      document: {
        name: 'No. 2, 3 in',
        serial: 'A-102',
        diameter: '3 in',
        complaint: { on: day(-6), words: 'starts only when tapped' },
        ...shared,
      },
    },
    {
      noun: 'tools',
      key: 'tool-three',
      document: { name: 'No. 3, 2 in', serial: 'B-201', diameter: '2 in', ratedPressure: '100 psi' },
    },
  ]
}

function sheets(day: Day, idOf: (key: string) => string): readonly DemoDocument[] {
  const ring = (gap: string, out: string) => [
    { part: 'striker-rings', key: 'end-gap', value: gap },
    { part: 'striker-rings', key: 'stands-out', value: out },
    { part: 'striker-rings', key: 'groove', grade: 'square' },
    { part: 'seals', key: 'seal', grade: 'good' },
    { part: 'tail-thread', key: 'thread', grade: 'sound' },
  ]
  const sheet = (key: string, tool: string, daysAgo: number, rest: object): DemoDocument => ({
    noun: 'inspections',
    key,
    document: {
      name: `${tool}, ${day(-daysAgo)}`,
      tool: idOf(tool),
      on: day(-daysAgo),
      by: 'Ada Example',
      ...rest,
    },
  })
  return [
    sheet('sheet-one-a', 'tool-one', 82, {
      stripped: true,
      tiltBefore: 'passed',
      tiltAfter: 'passed',
      replaced: ['striker-rings', 'seals'],
    }),
    sheet('sheet-one-b', 'tool-one', 50, { tiltBefore: 'passed', readings: ring('0.058 in', '0.034 in') }),
    sheet('sheet-one-c', 'tool-one', 7, {
      stripped: true,
      tiltAfter: 'passed',
      readings: ring('0.128 in', '0.023 in'),
    }),
    sheet('sheet-two', 'tool-two', 5, {
      tiltBefore: 'failed',
      readings: [{ part: 'seals', key: 'seal', grade: 'spent' }],
    }),
    sheet('sheet-three', 'tool-three', 20, { stripped: true, tiltAfter: 'passed' }),
  ]
}

function work(day: Day, idOf: (key: string) => string): readonly DemoDocument[] {
  const logs = BORED.map(
    ([daysAgo, feet, minutes], place): DemoDocument => ({
      noun: 'bore-logs',
      key: `shop-log-${place}`,
      document: {
        name: `Bore of ${day(-daysAgo)}`,
        crossing: idOf(COMPARABLE),
        on: day(-daysAgo),
        outcome: 'arrived',
        length: `${feet} ft`,
        hammerTime: `${minutes} min`,
        tool: idOf(place % 4 === 3 ? 'tool-two' : 'tool-one'),
        pressure: '97 psi',
        abrasivity: 3,
        oil: place % 3 === 2 ? 'poor' : 'good',
        air: 'dry',
      },
    }),
  )
  const days = PLANNED.map(
    (crossing, place): DemoDocument => ({
      noun: 'days',
      key: `shop-day-${place}`,
      document: {
        name: `Day of ${day(2 + 3 * place)}`,
        on: day(2 + 3 * place),
        crossings: [idOf(crossing)],
        tools: [{ crossing: idOf(crossing), tool: idOf('tool-one') }],
      },
    }),
  )
  const spare: DemoDocument = {
    noun: 'parts',
    key: 'spare-rings',
    document: { name: 'Ring set B', key: 'striker-rings', usedBefore: '12 h' },
  }
  return [...logs, ...days, spare]
}

/** The shop of the invented town, with its days counted from the one it is made on. */
export function shopDemo(at: Date, idOf: (key: string) => string): readonly DemoDocument[] {
  const today = Math.floor(at.getTime() / MS_PER_DAY)
  const day: Day = (daysFromNow) => writeDay(today + daysFromNow)
  return [...tools(day, idOf), ...sheets(day, idOf), ...work(day, idOf)]
}
