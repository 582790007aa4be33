import type { PublishedCheck } from './shape.ts'

/** Columns: time [min], outflow [cfm], inflow [cfm], barometer [psia], start [psi], end [psi], volume [gal]. */
const ROWS = [
  ['0.5', '100', '0', '14.7', '110', '100', '549.78'],
  ['1.5', '100', '0', '14.7', '110', '100', '1649.34'],
  ['1.5', '120', '0', '11.7', '150', '100', '315.0576'],
  ['0.5', '900', '45', '14.7', '100', '70', '1566.873'],
  ['1.5', '800', '75', '11.7', '120', '90', '3172.455'],
] as const

const ornl = ROWS.map(
  ([time, outflow, inflow, atmosphere, from, to, volume]): PublishedCheck => ({
    relation: 'receiver-time',
    name: `${volume} gal`,
    given: {
      volume: `${volume} gal`,
      inflow: `${inflow} cfm`,
      outflow: `${outflow} cfm`,
      from: `${from} psi`,
      to: `${to} psi`,
      atmosphere: `${atmosphere} psia`,
    },
    expected: {
      timeS: {
        printed: time,
        unit: 'min',
        tolerance: { fraction: 1e-4 },
        why: 'an exact input of the test turned round: only its 7.48 gallons to the cubic foot are rounded (7.48052)',
      },
      reached: { printed: 'reached' },
    },
    source: 'OrnlReceiverTests',
    standing: 'published',
  }),
)

/** Example 13-7: 20 scfm for 6 min from 100 to 80 psi. Columns: inflow [cfm], volume [gal]. */
const ESPOSITO = [
  ['0', '660'],
  ['5', '495'],
] as const

const esposito = ESPOSITO.map(
  ([inflow, volume]): PublishedCheck => ({
    relation: 'receiver-time',
    name: `Example 13-7, ${inflow} scfm coming in, ${volume} gal`,
    given: {
      volume: `${volume} gal`,
      inflow: `${inflow} cfm`,
      outflow: '20 cfm',
      from: '100 psi',
      to: '80 psi',
      atmosphere: '14.7 psia',
    },
    expected: {
      timeS: {
        printed: '6',
        unit: 'min',
        tolerance: { fraction: 0.001 },
        why: 'the exact time of the problem turned round: the volume is rounded to three digits',
      },
    },
    source: 'EspositoFluidPower',
    standing: 'second hand',
  }),
)

export const checks: readonly PublishedCheck[] = [...ornl, ...esposito]
