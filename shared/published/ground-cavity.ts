import type { PublishedCheck } from './shape.ts'

const FORMULA_DIGITS =
  'the printed table rounds to two decimals; the value here is the formula’s, worked apart'

const CLAY = { undrainedStrength: '50 kPa', shearModulus: '5000 kPa', insituStress: '20 kPa' } as const

/** φ, ψ deg, c kPa, E kPa, ν, p0 kPa, shape, limit pressure kPa, c/a. */
const DILATANT = [
  ['30', '0', '0', '26000', '0.3', '100', 'cylinder', '791.374', '12.1181'],
  ['30', '0', '0', '26000', '0.3', '100', 'sphere', '1451.55', '4.7854'],
  ['40', '10', '0', '26000', '0.3', '100', 'cylinder', '1392.46', '15.3502'],
  ['40', '10', '0', '26000', '0.3', '100', 'sphere', '3244.59', '5.7660'],
  ['35', '5', '0', '20000', '0.3', '15', 'sphere', '779.456', '9.5168'],
  ['38', '8', '0', '25000', '0.25', '15', 'sphere', '1186.696', '11.0469'],
  ['25', '0', '10', '15000', '0.3', '15', 'sphere', '476.999', '5.9109'],
] as const

/** Shape, φ deg, Irr, Fc, Fq. */
const FACTORS = [
  ['cylinder', '0', '10', '3.303', '1'],
  ['sphere', '0', '10', '4.403', '1'],
  ['cylinder', '0', '100', '5.605', '1'],
  ['sphere', '0', '100', '7.474', '1'],
  ['sphere', '20', '50', '12.977', '5.723'],
  ['cylinder', '30', '100', '10.919', '7.304'],
  ['sphere', '30', '100', '22.407', '13.937'],
  ['cylinder', '35', '50', '8.630', '7.043'],
  ['sphere', '40', '200', '38.340', '33.171'],
] as const

/** Undrained limit pressure, which half a degree of friction must come near to. */
const NEAR_TRESCA = [
  ['cylinder', '300.259', 0.02, 'half a degree of friction adds under 2 % to a cylinder'],
  ['sphere', '393.678', 0.03, 'half a degree of friction adds under 3 % to a sphere'],
] as const

/** φ deg, Irr, N*c, N*σ. */
const PILE_TIP = [
  ['0', '10', '6.97', '1'],
  ['0', '100', '10.04', '1'],
  ['0', '500', '12.19', '1'],
  ['30', '10', '30.03', '18.34'],
  ['30', '100', '86.64', '51.02'],
] as const

export const checks: readonly PublishedCheck[] = [
  {
    relation: 'cavity-pressure-undrained',
    name: 'cylinder, Ir 100',
    given: { ...CLAY, shape: 'cylinder' },
    expected: {
      limitPressurePa: { printed: '300.259', unit: 'kPa' },
      plasticRadiusRatio: { printed: '10.000' },
    },
    source: 'GibsonAnderson1961',
    standing: 'published',
  },
  {
    relation: 'cavity-pressure-undrained',
    name: 'sphere, Ir 100',
    given: { ...CLAY, shape: 'sphere' },
    expected: {
      limitPressurePa: { printed: '393.678', unit: 'kPa' },
      plasticRadiusRatio: { printed: '4.6416' },
    },
    source: 'BishopHillMott1945',
    standing: 'published',
  },
  {
    relation: 'cavity-pressure-undrained',
    name: 'rise over su, Ir 100',
    given: { undrainedStrength: '1 kPa', shearModulus: '100 kPa', insituStress: '0 kPa', shape: 'cylinder' },
    expected: { limitPressurePa: { printed: '5.605', unit: 'kPa' }, plasticRadiusRatio: { printed: '10.0' } },
    source: 'ExactIdentity',
    standing: 'published',
  },
  ...DILATANT.map(
    ([phi, psi, c, modulus, nu, p0, shape, pressure, ratio]): PublishedCheck => ({
      relation: 'cavity-pressure-dilatant',
      name: `φ ${phi}°, ψ ${psi}°, c ${c}, p0 ${p0} kPa, ${shape}`,
      given: {
        frictionAngle: `${phi} deg`,
        dilationAngle: `${psi} deg`,
        cohesion: `${c} kPa`,
        youngsModulus: `${modulus} kPa`,
        poissonRatio: nu,
        insituStress: `${p0} kPa`,
        shape,
      },
      expected: {
        limitPressurePa: {
          printed: pressure,
          unit: 'kPa',
          tolerance: { fraction: 0.001 },
          why: 'series and an independent integration of the similarity equation agree to 0.1 %',
        },
        plasticRadiusRatio: {
          printed: ratio,
          tolerance: { fraction: 0.001 },
          why: 'as the pressure: the two calculations agree to 0.1 %',
        },
      },
      source: 'SecondCalculation',
      standing: 'our judgement',
    }),
  ),
  ...NEAR_TRESCA.map(
    ([shape, exact, fraction, why]): PublishedCheck => ({
      relation: 'cavity-pressure-dilatant',
      name: `φ 0.5° comes near to undrained, ${shape}`,
      given: {
        frictionAngle: '0.5 deg',
        dilationAngle: '0 deg',
        cohesion: '50 kPa',
        youngsModulus: '14990 kPa',
        poissonRatio: '0.499',
        insituStress: '20 kPa',
        shape,
      },
      expected: { limitPressurePa: { printed: exact, unit: 'kPa', tolerance: { fraction }, why } },
      source: 'ExactIdentity',
      standing: 'published',
    }),
  ),
  ...FACTORS.map(
    ([shape, phi, rigidityIndex, fc, fq]): PublishedCheck => ({
      relation: 'cavity-expansion-factors',
      name: `${shape}, φ ${phi}°, Irr ${rigidityIndex}`,
      given: { frictionAngle: `${phi} deg`, rigidityIndex, shape },
      expected: {
        fc: { printed: fc, tolerance: { absolute: 0.005 }, why: FORMULA_DIGITS },
        fq: { printed: fq, tolerance: { absolute: 0.005 }, why: FORMULA_DIGITS },
      },
      source: 'Vesic1972',
      standing: 'second hand',
    }),
  ),
  ...PILE_TIP.map(
    ([phi, rigidityIndex, nc, nSigma]): PublishedCheck => ({
      relation: 'pile-tip-factors',
      name: `φ ${phi}°, Irr ${rigidityIndex}`,
      given: { frictionAngle: `${phi} deg`, rigidityIndex },
      expected: {
        nc: { printed: nc },
        nSigma: {
          printed: nSigma,
          tolerance: { absolute: 0.005 },
          why: 'two decimals, as its neighbours are printed',
        },
      },
      source: 'Vesic1977',
      standing: 'second hand',
    }),
  ),
]
