import type { PublishedCheck } from './shape.ts'

/** K of a coupling by its bore ratio. */
const COUPLINGS = [
  ['0.9', '0.20'],
  ['0.85', '0.41'],
  ['0.8', '0.76'],
  ['0.75', '1.30'],
  ['0.7', '2.15'],
  ['0.6', '5.6'],
] as const

const couplingChecks = COUPLINGS.map(
  ([boreRatio, printed]): PublishedCheck => ({
    relation: 'coupling-loss',
    name: `β ${boreRatio}`,
    given: { boreRatio },
    expected: { coefficient: { printed } },
    source: 'AirSecondCalculation',
    standing: 'our judgement',
  }),
)

export const checks: readonly PublishedCheck[] = [
  ...couplingChecks,
  {
    relation: 'component-loss',
    name: 'C 1e-8 m³/(s·Pa), b 0.35, 7 bar absolute: choked flow',
    given: {
      conductance: '1e-8 m3/(s-Pa)',
      criticalRatio: '0.35',
      freeAir: '0.001 m3/s',
      pressure: '598675 Pa',
      temperature: '20 °C',
    },
    expected: { chokedKgPerS: { printed: '0.008295', unit: 'kg/s' }, delivery: { printed: 'delivered' } },
    source: 'Iso6358',
    standing: 'published',
  },
  {
    relation: 'component-loss',
    name: 'C 3 dm³/(s·bar), 600 L/min at 6 bar',
    given: {
      conductance: '3 L/(s-bar)',
      criticalRatio: '0.35',
      freeAir: '600 L/min',
      pressure: '6 bar',
      temperature: '20 °C',
    },
    expected: {
      lossPa: {
        printed: '0.55',
        unit: 'bar',
        tolerance: { absolute: 0.008 },
        why: '“about 0.55 bar”, with b not said: 0.35 gives 0.548, here with a barometer of 1.013 bar, not 1',
      },
    },
    source: 'Iso6358',
    standing: 'published',
  },
  {
    relation: 'valve-flow',
    name: 'Example 13-10: Cv 7.4 at 80 psi and 80 °F, choked',
    given: { flowCoefficient: '7.4', pressure: '80 psi', outlet: '0 psi', temperature: '80 °F' },
    expected: {
      freeAirM3PerS: {
        printed: '341.7',
        unit: 'cfm',
        tolerance: { absolute: 0.5 },
        why: 'its code prints the floor, 341; 459.67 for 460 and 14.696 for 14.7 psi are the rest',
      },
      delivery: { printed: 'choked' },
    },
    source: 'EspositoFluidPower',
    standing: 'second hand',
  },
  {
    relation: 'valve-flow',
    name: 'Example 13-11: 50 scfm with 12 psi lost to 100 psi, Cv 1.38',
    given: { flowCoefficient: '1.38', pressure: '112 psi', outlet: '100 psi', temperature: '80 °F' },
    expected: {
      freeAirM3PerS: {
        printed: '50',
        unit: 'cfm',
        tolerance: { absolute: 0.2 },
        why: 'the problem turned round: its Cv is rounded to three digits',
      },
      delivery: { printed: 'passes' },
    },
    source: 'EspositoFluidPower',
    standing: 'second hand',
  },
  {
    relation: 'air-loss-harris',
    name: 'Example 14-1: 100 scfm at 150 psi, 250 ft of 1 in pipe',
    given: { bore: '1.049 in', length: '250 ft', freeAir: '100 cfm', pressure: '150 psi' },
    expected: {
      lossPa: {
        printed: '4.93',
        unit: 'psi',
        tolerance: { absolute: 0.012 },
        why: 'its table gives d^5.31 as 1.2892; 1.049^5.31 is 1.2893, and 14.7 stands for 14.696 psi',
      },
    },
    source: 'EspositoFluidPower',
    standing: 'second hand',
  },
  {
    relation: 'hose-parting',
    name: '100 ft of 1 in hose at 100 psi, worked by hand',
    given: { bore: '1 in', length: '100 ft', pressure: '100 psi', atmosphere: '101325 Pa' },
    expected: {
      thrustN: { printed: '456.7', unit: 'N' },
      energyJ: { printed: '14.447', unit: 'kJ' },
    },
    source: 'ExactIdentity',
    standing: 'published',
  },
]
