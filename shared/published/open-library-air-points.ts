import type { PublishedCheck } from './shape.ts'

/** Columns: Reynolds number, relative roughness, method, Darcy friction factor. */
const FRICTION = [
  ['100000', '0.0001', 'colebrook', '0.018513866077471648'],
  ['100000', '0', 'colebrook', '0.01798977308427384'],
  ['104800000000', '0.0000000255', 'colebrook', '0.0037751087365339906'],
  ['100000', '0.0001', 'haaland', '0.018265053014793857'],
  ['100000', '0.0001', 'swamee-jain', '0.018452424431901808'],
  ['100000', '0.0001', 'churchill', '0.018462624566280075'],
  ['100000', '0.0001', 'serghides', '0.01851358983180063'],
  ['128', '0', 'colebrook', '0.5'],
] as const

const frictionChecks = FRICTION.map(
  ([reynolds, relativeRoughness, method, printed]): PublishedCheck => ({
    relation: 'friction-factor',
    name: `${method}, Re ${reynolds}, roughness ${relativeRoughness}`,
    given: { reynolds, relativeRoughness, method },
    expected: {
      frictionFactor: {
        printed,
        tolerance: { fraction: 1e-9 },
        why: 'printed with every digit a double holds; the last ones are rounding, and 0.5 is exact',
      },
    },
    source: 'OpenLibraryFluids',
    standing: 'published',
  }),
)

/** Crane's Example 7-16 (see crane-air-examples) solved anew by the library: 2.7148 psi. */
const craneSolvedAnew: PublishedCheck = {
  relation: 'hose-friction-loss',
  name: 'Crane 7-16 solved by the library',
  given: {
    bore: '1.049 in',
    length: '75 ft',
    freeAir: '110.584 cfm',
    pressure: '65 psi',
    temperature: '115 °F',
    roughness: '0.0018 in',
  },
  expected: {
    lossPa: {
      printed: '2.7148',
      unit: 'psi',
      tolerance: { fraction: 0.006 },
      why: 'the library takes real-gas density and viscosity, and standard air by another molar volume: its velocities are 0.1 % higher',
    },
  },
  source: 'OpenLibraryFluids',
  standing: 'published',
}

export const checks: readonly PublishedCheck[] = [...frictionChecks, craneSolvedAnew]
