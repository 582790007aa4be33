import type { Printed, PublishedCheck } from './shape.ts'

const APART = { source: 'SecondCalculation', standing: 'our judgement' } as const

/** Body mm; length m, mass kg, blow J, rate Hz, recoil kN, free air m3/min as tabulated with the proportions. */
const PROPORTIONS = [
  ['45', '1.00', '7.7', '20.0', '9.2', '0.29', '0.45'],
  ['65', '1.22', '19.8', '44.9', '7.9', '0.54', '0.87'],
  ['75', '1.32', '28.5', '61.5', '7.5', '0.68', '1.13'],
  ['100', '1.55', '59.3', '115.9', '6.7', '1.10', '1.89'],
  ['130', '1.79', '115.8', '206.4', '6.0', '1.69', '3.04'],
  ['150', '1.94', '166.8', '282.7', '5.7', '2.14', '3.93'],
  ['180', '2.14', '265.5', '422.2', '5.3', '2.90', '5.46'],
] as const

const one = (
  relation: string,
  name: string,
  given: PublishedCheck['given'],
  expected: Readonly<Record<string, Printed>>,
): PublishedCheck => ({ relation, name, given, expected, ...APART })

const TOOL_CHECKS: readonly PublishedCheck[] = [
  ...PROPORTIONS.map(([diameter, length, mass, energy, rate, recoil, air]) =>
    one(
      'tool-proportions',
      `${diameter} mm`,
      { diameter: `${diameter} mm` },
      {
        lengthM: { printed: length, unit: 'm' },
        massKg: { printed: mass, unit: 'kg' },
        blowEnergyJ: { printed: energy, unit: 'J' },
        blowRateHz: { printed: rate, unit: 'Hz' },
        recoilN: { printed: recoil, unit: 'kN' },
        freeAirM3PerS: { printed: air, unit: 'm3/min' },
      },
    ),
  ),
  one(
    'tool-proportions',
    '100 mm, striker',
    { diameter: '100 mm' },
    { strikerMassKg: { printed: '13.047', unit: 'kg' }, strokeM: { printed: '124.11', unit: 'mm' } },
  ),
  one(
    'tool-at-pressure',
    'a quarter of the pressure',
    { blowEnergy: '60 J', blowRate: '7 Hz', recoil: '800 N', statedPressure: '6.4 bar', pressure: '1.6 bar' },
    {
      energyJ: { printed: '15.00', unit: 'J' },
      rateHz: { printed: '3.500', unit: 'Hz' },
      pushN: { printed: '200.0', unit: 'N' },
    },
  ),
  {
    relation: 'impact-efficiency',
    name: 'striker 11.56 kg on 34.27 kg',
    given: { strikerMass: '11.56 kg', struckMass: '34.27 kg', restitution: '0.55' },
    expected: { efficiency: { printed: '0.478435' } },
    source: 'Hiley1925',
    standing: 'published',
  },
]

const SOIL_CHECKS: readonly PublishedCheck[] = [
  one(
    'tip-resistance-clay',
    'stiff clay at 1.0 m',
    { undrainedStrength: '75 kPa', rigidityIndex: '100', verticalStress: '19 kPa' },
    { tipPressurePa: { printed: '1144.8', unit: 'kPa' } },
  ),
  one(
    'tip-resistance-granular',
    'medium dense sand at 1.0 m',
    { limitPressure: '952.298 kPa', interfaceAngle: '20 deg' },
    { tipPressurePa: { printed: '3415.8', unit: 'kPa' } },
  ),
  one(
    'sand-strength',
    'density 0.50, 12 kPa',
    { relativeDensity: '0.5', criticalAngle: '33 deg', meanStress: '12 kPa' },
    {
      dilatancyIndex: { printed: '1.66405' },
      frictionAngleRad: { printed: '37.99216', unit: 'deg' },
      dilationAngleRad: { printed: '6.24020', unit: 'deg' },
      shearModulusPa: { printed: '9787.25', unit: 'kPa' },
      limitPressurePa: { printed: '952.298', unit: 'kPa' },
    },
  ),
  one(
    'sand-strength',
    'density 0.85, 14 kPa',
    { relativeDensity: '0.85', criticalAngle: '36 deg', meanStress: '14 kPa' },
    {
      dilatancyIndex: { printed: '3.07492' },
      limitPressurePa: { printed: '2375.35', unit: 'kPa' },
    },
  ),
  one(
    'shaft-friction',
    'stiff clay',
    { soil: 'clay', base: '75 kPa', share: '0.28' },
    { frictionPa: { printed: '21.00', unit: 'kPa' } },
  ),
  one(
    'shaft-friction',
    'medium dense sand',
    { soil: 'granular', base: '3416.0 kPa', share: '0.007' },
    { frictionPa: { printed: '14.35', unit: 'kPa' } },
  ),
  {
    relation: 'dcp-resistance',
    name: '25 mm a blow',
    given: { penetration: '25 mm' },
    expected: {
      energyJ: { printed: '45.126', unit: 'J' },
      coneAreaM2: { printed: '3.1416', unit: 'cm2' },
      dynamicResistancePa: { printed: '5.746', unit: 'MPa' },
      bearingRatio: { printed: '0.079' },
    },
    source: 'AstmD6951',
    standing: 'second hand',
  },
]

const DRIVING_CHECKS: readonly PublishedCheck[] = [
  one(
    'driving-resistance',
    'stiff clay, 75 mm',
    {
      tipPressure: '1144.84 kPa',
      friction: '21 kPa',
      diameter: '75 mm',
      length: '1.32439 m',
      rateFactor: '1.3',
    },
    {
      tipForceN: { printed: '5.058', unit: 'kN' },
      shaftForceN: { printed: '6.232', unit: 'kN' },
      resistanceN: { printed: '14.676', unit: 'kN' },
    },
  ),
  one(
    'set-per-blow',
    'stiff clay, 75 mm',
    { blowEnergy: '61.5315 J', efficiency: '0.45595', resistance: '14677.1 N', quake: '0.625 mm' },
    {
      setM: {
        printed: '1.5990',
        unit: 'mm',
        tolerance: { absolute: 0.0002 },
        why: 'inputs rounded to six digits',
      },
    },
  ),
  {
    relation: 'set-per-blow',
    name: '60 J at a half on a 75 mm nose at 5.746 MPa',
    given: { blowEnergy: '60 J', efficiency: '0.5', resistance: '25385 N', quake: '0 mm' },
    expected: { setM: { printed: '1.182', unit: 'mm' } },
    source: 'ExactIdentity',
    standing: 'published',
  },
  one(
    'advance-rate',
    'stiff clay, 75 mm',
    { set: '1.5991 mm', blowRate: '7.49978 Hz' },
    {
      uncappedMPerS: { printed: '0.7196', unit: 'm/min' },
      advanceMPerS: { printed: '0.5716', unit: 'm/min' },
      verdict: { printed: 'advances' },
    },
  ),
  one(
    'advance-rate',
    'a set under 0.15 mm',
    { set: '0.149 mm', blowRate: '9 Hz' },
    { verdict: { printed: 'stalls' } },
  ),
  one(
    'anchorage-length',
    '75 mm in stiff clay',
    { recoil: '683.237 N', friction: '21 kPa', diameter: '75 mm' },
    { lengthM: { printed: '138.08', unit: 'mm' } },
  ),
]

export const checks: readonly PublishedCheck[] = [...TOOL_CHECKS, ...SOIL_CHECKS, ...DRIVING_CHECKS]
