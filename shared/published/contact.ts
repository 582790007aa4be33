import type { PublishedCheck } from './shape.ts'

const MODEL = { source: 'ContactModel', standing: 'our judgement' } as const

export const checks: readonly PublishedCheck[] = [
  ...(
    [
      ['0.40', '0.15', '0.012408'],
      ['0.30', '0.10', '0.009917'],
      ['0.00', '0.15', '0.347290'],
    ] as const
  ).map(
    ([separation, sigma, probability]): PublishedCheck => ({
      relation: 'contact-chance',
      name: `axes ${separation} m apart, known to ${sigma} m`,
      given: { separation: `${separation} m`, reach: '0.0675 m', sigma: `${sigma} m` },
      expected: { probability: { printed: probability } },
      ...MODEL,
    }),
  ),
  {
    relation: 'contact-chance',
    name: 'tool of 75 mm, gas main of 60.3 mm, depth only guessed',
    // σ = √(49.98² + 200²) mm.
    given: { separation: '0.45 m', reach: '67.65 mm', sigma: '206.15 mm' },
    expected: { probability: { printed: '0.0258' } },
    ...MODEL,
  },
  {
    relation: 'contact-chance',
    name: 'the same main exposed and measured',
    // σ = √(49.98² + 15.2²) mm.
    given: { separation: '0.45 m', reach: '67.65 mm', sigma: '52.24 mm' },
    expected: {
      probability: { printed: '0', tolerance: { absolute: 1e-9 }, why: 'printed as “below 1e-9”' },
    },
    ...MODEL,
  },
  {
    relation: 'hit-chance',
    name: '15 m, window of 0.3 m each way',
    given: { halfWindow: '0.3 m', sigma: '182.12 mm' },
    expected: { probability: { printed: '0.8109' } },
    ...MODEL,
  },
]
