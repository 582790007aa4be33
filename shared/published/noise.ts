import type { PublishedCheck } from './shape.ts'

const LAW = { source: 'Cfr1926Noise', standing: 'published' } as const
const hours = (printed: string) => ({ printed, unit: 'h' })

/** Table D-2, dBA and hours a day; 115 is "or less". It rounds what its own formula gives: 92 dBA is 6.06 h. */
const TABLE_D2: readonly (readonly [string, ReturnType<typeof hours>])[] = [
  ['90', hours('8')],
  ['92', hours('6')],
  ['95', hours('4')],
  ['97', hours('3')],
  ['100', hours('2')],
  ['102', hours('1.5')],
  ['105', hours('1')],
  ['110', hours('0.5')],
  ['115', hours('0.25')],
]
/** The formula of the rule, two decimals, worked apart from this program. */
const FORMULA: readonly (readonly [string, string])[] = [
  ['85', '16.00'],
  ['88', '10.56'],
  ['91', '6.96'],
  ['92', '6.06'],
  ['94', '4.59'],
  ['97', '3.03'],
  ['102', '1.52'],
  ['103', '1.32'],
]
const NIOSH: readonly (readonly [string, string, string])[] = [
  ['85', '8', 'h'],
  ['88', '4', 'h'],
  ['90', '2.52', 'h'],
  ['91', '2', 'h'],
  ['94', '1', 'h'],
  ['95', '47.6', 'min'],
  ['97', '30', 'min'],
  ['100', '15', 'min'],
  ['103', '7.5', 'min'],
  ['105', '4.7', 'min'],
  ['110', '1.5', 'min'],
  ['115', '28', 's'],
]

export const checks: readonly PublishedCheck[] = [
  ...TABLE_D2.map(
    ([level, durationS]): PublishedCheck => ({
      relation: 'noise-duration',
      name: `OSHA table, ${level} dBA`,
      given: { level, rule: 'osha' },
      expected: { durationS },
      ...LAW,
    }),
  ),
  ...FORMULA.map(
    ([level, printed]): PublishedCheck => ({
      relation: 'noise-duration',
      name: `OSHA formula, ${level} dBA`,
      given: { level, rule: 'osha' },
      expected: { durationS: hours(printed) },
      source: 'Cfr1926Noise',
      standing: 'second hand',
    }),
  ),
  ...NIOSH.map(
    ([level, printed, unit]): PublishedCheck => ({
      relation: 'noise-duration',
      name: `NIOSH, ${level} dBA`,
      given: { level, rule: 'niosh' },
      expected: { durationS: { printed, unit } },
      ...LAW,
    }),
  ),
  {
    relation: 'noise-dose',
    name: 'the example of 1926.52(d)(2)(iii)',
    given: { levels: '110,100,90', hours: '0.25,0.5,1.5', rule: 'osha' },
    expected: { dose: { printed: '0.938' } },
    ...LAW,
  },
  {
    relation: 'noise-dose',
    name: '100 dBA for 3 h, OSHA',
    given: { levels: '100', hours: '3', rule: 'osha' },
    expected: { dose: { printed: '150', unit: '%' } },
    source: 'Cfr1926Noise',
    standing: 'second hand',
  },
  {
    relation: 'noise-dose',
    name: '100 dBA for 3 h, NIOSH',
    given: { levels: '100', hours: '3', rule: 'niosh' },
    expected: { dose: { printed: '1200', unit: '%' } },
    source: 'Cfr1926Noise',
    standing: 'second hand',
  },
]
