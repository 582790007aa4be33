import type { PublishedCheck } from './shape.ts'

/** 100 cfm to 100 psi, air leaving 10 °C warmer: columns ambient, humidity, out at the machine [kg/h], in all down to the tool. */
const CONDENSATE = [
  ['20 °C', '80 %', '1.68', '1.98'],
  ['10 °C', '80 %', '0.89', '1.07'],
  ['30 °C', '70 %', '2.48', '2.96'],
] as const

const condensateChecks = CONDENSATE.flatMap(([temperature, relativeHumidity, atMachine, inAll]) =>
  [['10 K', atMachine, 'at the machine'] as const, ['0 K', inAll, 'down to the tool'] as const].map(
    ([outletRise, printed, where]): PublishedCheck => ({
      relation: 'condensate-rate',
      name: `${temperature}, ${relativeHumidity}, ${where}`,
      given: { freeAir: '100 cfm', pressure: '100 psi', temperature, relativeHumidity, outletRise },
      expected: {
        rateKgPerS: {
          printed,
          unit: 'kg/h',
          tolerance: { absolute: 0.011 },
          why: 'a difference of figures that were each rounded to the last digit',
        },
      },
      source: 'AirSecondCalculation',
      standing: 'our judgement',
    }),
  ),
)

/** Saturated vapour by an open library, over ice and over water: temperature [°C], pressure [Pa]. */
const SATURATION = [
  ['-20', '103.26'],
  ['-5', '401.76'],
  ['0.5', '633.77'],
  ['10', '1228.00'],
  ['15', '1705.45'],
  ['20', '2338.80'],
  ['25', '3169.22'],
  ['30', '4246.03'],
  ['35', '5627.82'],
  ['40', '7383.46'],
  ['45', '9593.22'],
] as const

const saturationChecks = SATURATION.map(
  ([celsius, printed]): PublishedCheck => ({
    relation: 'saturated-vapour',
    name: `${celsius} °C`,
    given: { temperature: `${celsius} °C` },
    expected: { saturationPa: { printed, unit: 'Pa' } },
    source: 'OpenLibraryPsychro',
    standing: 'published',
  }),
)

/** 20 °C before the tool at 7 bar absolute, by the share of work taken out: exhaust [°C]. */
const EXHAUST = [
  ['1', '-52'],
  ['0.5', '-16'],
  ['0.3', '-2'],
  ['0.15', '9'],
] as const

const exhaustChecks = EXHAUST.map(
  ([workShare, printed]): PublishedCheck => ({
    relation: 'exhaust-temperature',
    name: `share of work ${workShare}`,
    given: { supply: '20 °C', pressure: '6 bar', workShare, atmosphere: '1 bara' },
    expected: { exhaustK: { printed, unit: '°C' } },
    source: 'AirSecondCalculation',
    standing: 'our judgement',
  }),
)

/** Water of 8 h a day turned to a rate: 8.34 lb to the gallon. */
const galInEightHours = (gal: number): string => `${((gal * 8.34) / 8).toFixed(3)}`

export const checks: readonly PublishedCheck[] = [
  {
    relation: 'saturated-vapour',
    name: '80 °F, vapour in 1000 cubic feet',
    given: { temperature: '80 °F' },
    expected: {
      vapourKgPerM3: {
        printed: '0.00158',
        unit: 'lb/ft3',
        tolerance: { fraction: 0.005 },
        why: 'three digits read off a table; half a digit is 0.3 %, the ideal gas another 0.1 %',
      },
    },
    source: 'EspositoFluidPower',
    standing: 'second hand',
  },
  ...saturationChecks,
  {
    relation: 'condensate-rate',
    name: 'Example 13-9: 100 scfm, saturated at 80 °F, 100 psi, less what leaves at 80 °F',
    given: {
      freeAir: '100 cfm',
      pressure: '100 psi',
      temperature: '80 °F',
      relativeHumidity: '100 %',
      outletRise: '0 K',
    },
    expected: {
      rateKgPerS: {
        printed: galInEightHours(9.09 - 1.15),
        unit: 'lb/h',
        tolerance: { fraction: 0.012 },
        why: 'the book takes 1.58 and 0.20 lb per 1000 cubic feet off a table, the second to one figure; both rounded',
      },
    },
    source: 'EspositoFluidPower',
    standing: 'second hand',
  },
  ...condensateChecks,
  ...exhaustChecks,
]
