import type { PublishedCheck } from './shape.ts'

/**
 * Loss of air in schedule 40 steel pipe, psi per 100 ft, at 100 psi and 60 °F: cells are 'free cfm:psi'.
 * The table is of first order (density of the stated pressure): above 11 psi its cells are no real end pressures.
 */
const PIPES = [
  {
    pipe: '1/2',
    boreIn: '0.622',
    cells: '5:0.106 10:0.356 15:0.834 20:1.43 25:2.21 30:3.15 40:5.49 45:6.90',
  },
  {
    pipe: '3/4',
    boreIn: '0.824',
    cells:
      '10:0.094 15:0.201 20:0.345 30:0.748 35:1.00 45:1.62 50:1.99 60:2.85 70:3.83 80:4.96 90:6.25 100:7.69 150:17.0 175:23.1 225:37.9',
  },
  {
    pipe: '1',
    boreIn: '1.049',
    cells:
      '25:0.156 35:0.293 40:0.379 50:0.578 60:0.819 70:1.10 80:1.43 90:1.80 100:2.21 125:3.39 175:6.60 200:8.54 250:13.3 275:16.0 325:22.3 350:25.8 400:33.6',
  },
  {
    pipe: '1-1/4',
    boreIn: '1.38',
    cells:
      '20:0.026 25:0.039 30:0.055 40:0.095 45:0.116 125:0.825 150:1.17 200:2.05 225:2.59 250:3.18 300:4.56 325:5.32 375:7.05 400:8.02',
  },
  {
    pipe: '1-1/2',
    boreIn: '1.61',
    cells:
      '30:0.026 35:0.035 45:0.055 50:0.067 60:0.094 70:0.126 80:0.162 90:0.203 100:0.247 150:0.537 175:0.727 225:1.19 275:1.75 300:2.07 350:2.80 375:3.20',
  },
  {
    pipe: '2',
    boreIn: '2.067',
    cells:
      '50:0.019 60:0.027 70:0.036 80:0.046 90:0.058 100:0.070 125:0.107 175:0.205 200:0.264 250:0.404 275:0.484 325:0.673 350:0.776 400:1.00',
  },
] as const

/** Misprints, by pipe and cfm: 0.356 has two digits changed over for 0.386; 0.149 stands where its neighbours imply 0.142. */
const MISPRINTED: ReadonlySet<string> = new Set(['1/2 in, 10 cfm', '1-1/4 in, 50 cfm'])

/** Below this loss, psi, the printed step of a thousandth is coarse against the value. */
const SMALL_LOSS_PSI = 0.1

function cell(pipe: string, boreIn: string, text: string): PublishedCheck {
  const [cfm = '', printed = ''] = text.split(':')
  const name = `${pipe} in, ${cfm} cfm`
  const small = Number(printed) < SMALL_LOSS_PSI
  return {
    relation: 'air-loss-first-order',
    name,
    given: {
      bore: `${boreIn} in`,
      length: '100 ft',
      freeAir: `${cfm} cfm`,
      pressure: '100 psi',
      temperature: '60 °F',
      roughness: '0.0018 in',
    },
    expected: {
      lossPa: {
        printed,
        unit: 'psi',
        tolerance: small ? { absolute: 0.0025 } : { fraction: 0.02 },
        why: 'the table was computed by hand from a friction chart read to two or three digits; its cells scatter about the formula by that much',
      },
    },
    source: 'CraneAirTable',
    standing: 'published',
    ...(MISPRINTED.has(name) ? { knownWrong: true as const } : {}),
  }
}

export const checks: readonly PublishedCheck[] = PIPES.flatMap(({ pipe, boreIn, cells }) =>
  cells.split(' ').map((text) => cell(pipe, boreIn, text)),
)
