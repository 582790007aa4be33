import type { PublishedCheck } from './shape.ts'

/** Crane counts standard air of 60 °F; the relation takes free air at the site's own temperature. */
const atFahrenheit = (standardCfm: number, temperatureF: number): string =>
  `${((standardCfm * (temperatureF + 459.67)) / (60 + 459.67)).toFixed(3)} cfm`

export const checks: readonly PublishedCheck[] = [
  {
    relation: 'hose-friction-loss',
    name: 'Example 7-16',
    given: {
      bore: '1.049 in',
      length: '75 ft',
      freeAir: atFahrenheit(100, 115),
      pressure: '65 psi',
      temperature: '115 °F',
      roughness: '0.0018 in',
    },
    expected: {
      lossPa: {
        printed: '2.61',
        unit: 'psi',
        tolerance: { fraction: 0.04 },
        why: 'the book scales its own rounded table by density and temperature; solved exactly the example gives 2.70 to 2.71 psi',
      },
      outletGaugePa: {
        printed: '62.39',
        unit: 'psi',
        tolerance: { absolute: 0.11 },
        why: '65 psi less the printed loss, so with its difference',
      },
      delivery: { printed: 'delivered' },
    },
    source: 'CraneTp410',
    standing: 'published',
  },
  {
    relation: 'hose-friction-loss',
    name: 'Example 7-22, at the flow printed for discharge to the open air',
    given: {
      bore: '0.546 in',
      length: '10 ft',
      freeAir: atFahrenheit(3762 / 60, 100),
      pressure: '19.3 psi',
      temperature: '100 °F',
      roughness: '0.0018 in',
      couplings: '1',
    },
    expected: {
      lossPa: {
        printed: '19.3',
        unit: 'psi',
        tolerance: { absolute: 0.35 },
        why: 'the printed flow is rounded and found with a table factor: 0.5 % of flow is 0.35 psi at the open end',
      },
    },
    source: 'CraneTp410',
    standing: 'published',
  },
]
