import { relation } from '../relation.ts'
import { HEAT_RATIO, SEA_LEVEL_PA } from './dry-air.ts'

const K = HEAT_RATIO
/** p/p0 at a throat that runs at the speed of sound, times 1 + κ: what a choked end pushes with, 1.268. */
const CHOKED_THRUST = (1 + K) * (2 / (K + 1)) ** (K / (K - 1))
/** Gauge over barometer from which an open end chokes. */
const CHOKES_FROM = ((K + 1) / 2) ** (K / (K - 1)) - 1

/**
 * What is in a hose that parts under pressure.
 *
 * F = A [ (1 + κ) (2/(κ+1))^(κ/(κ−1)) p − p0 ]  choked, else A κ M² p0;   E = V [ p ln(p/p0) − (p − p0) ]
 * F N at the open end, A m² its bore, p absolute and p0 the barometer, Pa; E J, what the air in the hose can do on its way
 * out at an even temperature, V m³ its volume.
 * Error: bounds, not forecasts: the thrust falls as the hose empties, in under a second.
 */
export const hoseParting = relation({
  id: 'hose-parting',
  title: 'Thrust and stored energy of a parted hose',
  formula: 'F = A·[1.268·p − p0]; E = V·[p·ln(p/p0) − (p − p0)]',
  sources: ['GasDynamics', 'ExactIdentity'],
  inputs: {
    bore: {
      kind: 'diameter',
      words: 'hose bore',
      range: { min: 0.006, max: 0.1, hardMin: 0.002, hardMax: 1 },
    },
    length: {
      kind: 'length',
      words: 'length of hose that empties',
      range: { min: 0, max: 300, hardMin: 0, hardMax: 10_000 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure in the hose',
      range: { min: 100_000, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    atmosphere: {
      kind: 'absolutePressure',
      words: 'barometer at the site',
      range: { min: 50_000, max: 107_000, hardMin: 30_000, hardMax: 115_000 },
      default: SEA_LEVEL_PA,
    },
  },
  outputs: {
    thrust: { kind: 'force', words: 'push of the open end at first' },
    energy: { kind: 'energy', words: 'energy stored in the hose' },
  },
  fn: ({ boreM, lengthM, pressureGaugePa, atmospherePa }) => {
    const areaM2 = (Math.PI * boreM ** 2) / 4
    const absPa = atmospherePa + pressureGaugePa
    const isChoked = pressureGaugePa >= CHOKES_FROM * atmospherePa
    const machSquared = (2 / (K - 1)) * ((absPa / atmospherePa) ** ((K - 1) / K) - 1)
    const thrustN =
      areaM2 * (isChoked ? CHOKED_THRUST * absPa - atmospherePa : K * machSquared * atmospherePa)
    const energyJ = areaM2 * lengthM * (absPa * Math.log(absPa / atmospherePa) - pressureGaugePa)
    return { thrustN, energyJ }
  },
  checks: ['air-components'],
  remarks:
    'A restraint on every joint, and a cut-off device where the bore is over 1/2 in, are what stop the whip.',
})
