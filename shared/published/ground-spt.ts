import type { PublishedCheck } from './shape.ts'

/** N, undrained strength kPa: the band limits as tabulated. */
const BAND_LIMITS = [
  ['2', '12.5'],
  ['4', '25'],
  ['8', '50'],
  ['15', '100'],
  ['30', '200'],
] as const

/** Method, N, effective vertical stress kPa or null, φ deg, source. */
const ANGLES = [
  ['wolff', '10', null, '30.05', 'Ufc322010'],
  ['wolff', '20', null, '32.88', 'Ufc322010'],
  ['wolff', '30', null, '35.61', 'Ufc322010'],
  ['wolff', '50', null, '40.75', 'Ufc322010'],
  ['kulhawy-mayne', '20', '100', '40.37', 'Ufc322010'],
  ['hatanaka-uchida', '20', null, '37.55', 'Ufc322010'],
  ['peck', '4', null, '29', 'PeckHansonThornburn1974'],
  ['peck', '10', null, '30', 'PeckHansonThornburn1974'],
  ['peck', '30', null, '36', 'PeckHansonThornburn1974'],
  ['peck', '50', null, '41', 'PeckHansonThornburn1974'],
  ['meyerhof', '4', null, '30', 'Meyerhof1956'],
  ['meyerhof', '10', null, '35', 'Meyerhof1956'],
  ['meyerhof', '30', null, '40', 'Meyerhof1956'],
  ['meyerhof', '50', null, '45', 'Meyerhof1956'],
  ['shioi-fukui-straight', '20', null, '33.0', 'ShioiFukui1982'],
  ['shioi-fukui-root', '15', null, '30.0', 'ShioiFukui1982'],
] as const

export const checks: readonly PublishedCheck[] = [
  ...BAND_LIMITS.map(
    ([sptN, strength]): PublishedCheck => ({
      relation: 'spt-undrained-strength',
      name: `band limit N ${sptN}`,
      given: { sptN },
      expected: { undrainedStrengthPa: { printed: strength, unit: 'kPa' } },
      source: 'TerzaghiPeck',
      standing: 'second hand',
    }),
  ),
  {
    relation: 'spt-undrained-strength',
    name: 'Hara, N 10',
    given: { sptN: '10', method: 'hara' },
    expected: { undrainedStrengthPa: { printed: '152', unit: 'kPa' } },
    source: 'Hara1974',
    standing: 'second hand',
  },
  ...ANGLES.map(
    ([method, sptN, stress, angle, source]): PublishedCheck => ({
      relation: 'spt-friction-angle',
      name: `${method}, N ${sptN}`,
      given: { sptN, method, ...(stress === null ? {} : { verticalStress: `${stress} kPa` }) },
      expected: {
        frictionAngleRad: {
          printed: angle,
          unit: 'deg',
          tolerance: { absolute: 0.01 },
          why: 'the source rounds to a hundredth of a degree, one of these to the even digit',
        },
      },
      source,
      standing: 'second hand',
    }),
  ),
  {
    relation: 'spt-stress-correction',
    name: '18 kPa, capped',
    given: { verticalStress: '18 kPa' },
    expected: { factor: { printed: '2.0' } },
    source: 'LiaoWhitman1986',
    standing: 'second hand',
  },
  {
    relation: 'spt-stress-correction',
    name: '18 kPa, no cap met',
    given: { verticalStress: '18 kPa', cap: '5' },
    expected: { factor: { printed: '2.37' } },
    source: 'LiaoWhitman1986',
    standing: 'second hand',
  },
  {
    relation: 'spt-fine-sand',
    name: 'N 25',
    given: { sptN: '25' },
    expected: { corrected: { printed: '20' } },
    source: 'Ufc322010',
    standing: 'second hand',
  },
  {
    relation: 'spt-fine-sand',
    name: 'N 12, not corrected',
    given: { sptN: '12' },
    expected: { corrected: { printed: '12.0' } },
    source: 'Ufc322010',
    standing: 'second hand',
  },
]
