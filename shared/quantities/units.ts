import {
  ATMOSPHERE_PA,
  DAY_S,
  DEGREE_RAD,
  FOOT_M,
  FOOT_POUND_J,
  GALLON_M3,
  GRAVITY_M_PER_S2,
  HOUR_S,
  INCH_M,
  MERCURY_PA_PER_M,
  MILE_M,
  MINUTE_S,
  POUND_FORCE_N,
  POUND_KG,
  PSF_PA,
  PSI_PA,
  RANKINE_K,
  WATER_PA_PER_M,
  YARD_M,
} from './exact-factors.ts'

// biome-ignore format: a plain list reads better in rows
export type Dimension =
  | 'length' | 'lengthPerBlow' | 'area' | 'volume' | 'duration' | 'speed'
  | 'mass' | 'massFlow' | 'density' | 'unitWeight' | 'force' | 'energy'
  | 'power' | 'pressure' | 'volumeFlow' | 'temperature' | 'temperatureDifference' | 'angle'
  | 'frequency' | 'conductance' | 'drift' | 'expansion' | 'perLength' | 'ratio' | 'count'

type Fraction = { readonly top: number; readonly divisor: number }

export type Unit = {
  /** The spelling we write. */
  readonly id: string
  readonly dimension: Dimension
  /** SI value = (value + offset) × factor. */
  readonly factor: number
  readonly offset: number
  /** The factor as a fraction of whole numbers where it is one: 3/4 in × 254 / 10000 rounds once, × 0.0254 twice. */
  readonly fraction: Fraction | null
  readonly names: readonly string[]
  /** Only on pressures that say what they are measured from. */
  readonly datum?: 'gauge' | 'absolute' | 'difference'
}

/** 0.0254 as 254 over 10000, 1/60 as 1 over 60; null when the factor is no such fraction. */
function simpleFraction(factor: number): Fraction | null {
  for (let divisor = 1; divisor <= 1e9; divisor *= 10) {
    const top = Math.round(factor * divisor)
    if (top > 0 && top / divisor === factor) return { top, divisor }
  }
  const divisor = Math.round(1 / factor)
  return divisor > 0 && 1 / divisor === factor ? { top: 1, divisor } : null
}

const unit = (dimension: Dimension, id: string, factor: number, ...others: readonly string[]): Unit => ({
  id,
  dimension,
  factor,
  offset: 0,
  fraction: simpleFraction(factor),
  names: [id, ...others],
})
const scale = (id: string, factor: number, offset: number, ...others: readonly string[]): Unit => ({
  ...unit('temperature', id, factor, ...others),
  offset,
})

/** `psi` also as `psig`, `psi(g)`, `psi gauge`, and the same for absolute. */
function pressure(id: string, factor: number, ...others: readonly string[]): readonly Unit[] {
  const plain = unit('pressure', id, factor, ...others)
  const names = (...tails: readonly string[]) =>
    plain.names.flatMap((name) => tails.map((tail) => name + tail))
  return [
    plain,
    { ...plain, id: `${id}g`, datum: 'gauge', names: names('g', '(g)', ' g', ' gauge', ' (gauge)', ' (g)') },
    {
      ...plain,
      id: `${id}a`,
      datum: 'absolute',
      names: names('a', '(a)', ' a', ' abs', ' absolute', ' (abs)', ' (a)'),
    },
  ]
}

/**
 * Every unit this program reads or writes. Names are written as `unit-spelling.ts` leaves them: words as symbols (feet → ft), powers as plain digits (ft3),
 * "per" as a slash, products as a hyphen.
 */
export const UNITS: readonly Unit[] = [
  unit('length', 'm', 1),
  unit('length', 'mm', 1e-3),
  unit('length', 'cm', 1e-2),
  unit('length', 'km', 1e3),
  unit('length', 'µm', 1e-6, 'um'),
  unit('length', 'ft', FOOT_M, "'", 'lf'),
  unit('length', 'in', INCH_M, '"'),
  unit('length', 'yd', YARD_M),
  unit('length', 'mi', MILE_M),
  unit('length', 'mil', INCH_M * 1e-3, 'mils', 'thou'),

  unit('lengthPerBlow', 'm/blow', 1),
  unit('lengthPerBlow', 'mm/blow', 1e-3),
  unit('lengthPerBlow', 'cm/blow', 1e-2),
  unit('lengthPerBlow', 'in/blow', INCH_M, '"/blow'),

  unit('area', 'm2', 1),
  unit('area', 'cm2', 1e-4),
  unit('area', 'mm2', 1e-6),
  unit('area', 'ft2', FOOT_M ** 2, 'sf'),
  unit('area', 'in2', INCH_M ** 2),
  unit('area', 'yd2', YARD_M ** 2, 'sy'),

  unit('volume', 'm3', 1),
  unit('volume', 'L', 1e-3),
  unit('volume', 'mL', 1e-6, 'cc'),
  unit('volume', 'cm3', 1e-6),
  unit('volume', 'mm3', 1e-9),
  unit('volume', 'ft3', FOOT_M ** 3, 'cf'),
  unit('volume', 'in3', INCH_M ** 3),
  unit('volume', 'yd3', YARD_M ** 3, 'cy'),
  unit('volume', 'gal', GALLON_M3),
  unit('volume', 'qt', GALLON_M3 / 4),
  unit('volume', 'fl oz', GALLON_M3 / 128),

  unit('duration', 's', 1),
  unit('duration', 'ms', 1e-3),
  unit('duration', 'min', MINUTE_S),
  unit('duration', 'h', HOUR_S),
  unit('duration', 'd', DAY_S),
  unit('speed', 'm/s', 1),
  unit('speed', 'mm/s', 1e-3),
  unit('speed', 'cm/s', 1e-2),
  unit('speed', 'm/min', 1 / MINUTE_S),
  unit('speed', 'mm/min', 1e-3 / MINUTE_S),
  unit('speed', 'cm/min', 1e-2 / MINUTE_S),
  unit('speed', 'm/h', 1 / HOUR_S),
  unit('speed', 'mm/h', 1e-3 / HOUR_S),
  unit('speed', 'km/h', 1e3 / HOUR_S, 'kph'),
  unit('speed', 'ft/s', FOOT_M, 'fps'),
  unit('speed', 'ft/min', FOOT_M / MINUTE_S, 'fpm', "'/min"),
  unit('speed', 'ft/h', FOOT_M / HOUR_S),
  unit('speed', 'in/h', INCH_M / HOUR_S),
  unit('speed', 'in/s', INCH_M, 'ips', '"/s'),
  unit('speed', 'in/min', INCH_M / MINUTE_S, '"/min'),
  unit('speed', 'mph', MILE_M / HOUR_S, 'mi/h'),

  unit('mass', 'kg', 1),
  unit('mass', 'g', 1e-3),
  unit('mass', 'mg', 1e-6),
  unit('mass', 't', 1e3, 'tonne', 'tonnes', 'ton', 'tons'),
  unit('mass', 'lb', POUND_KG, 'lbm'),
  unit('mass', 'oz', POUND_KG / 16),
  unit('mass', 'short ton', POUND_KG * 2000, 'short tons', 'ton', 'tons'),

  unit('massFlow', 'kg/s', 1),
  unit('massFlow', 'g/s', 1e-3),
  unit('massFlow', 'kg/min', 1 / MINUTE_S),
  unit('massFlow', 'g/min', 1e-3 / MINUTE_S),
  unit('massFlow', 'kg/h', 1 / HOUR_S),
  unit('massFlow', 'g/h', 1e-3 / HOUR_S),
  unit('massFlow', 'lb/s', POUND_KG),
  unit('massFlow', 'lb/min', POUND_KG / MINUTE_S),
  unit('massFlow', 'lb/h', POUND_KG / HOUR_S),

  unit('density', 'kg/m3', 1),
  unit('density', 'g/cm3', 1e3, 'g/cc'),
  unit('density', 'kg/L', 1e3),
  unit('density', 'g/L', 1),
  unit('density', 't/m3', 1e3),
  unit('density', 'lb/ft3', POUND_KG / FOOT_M ** 3, 'pcf', 'lbm/ft3'),
  unit('density', 'lb/in3', POUND_KG / INCH_M ** 3),

  unit('unitWeight', 'N/m3', 1),
  unit('unitWeight', 'kN/m3', 1e3),
  unit('unitWeight', 'lbf/ft3', POUND_FORCE_N / FOOT_M ** 3, 'pcf', 'lb/ft3'),

  unit('force', 'N', 1),
  unit('force', 'mN', 1e-3),
  unit('force', 'kN', 1e3),
  unit('force', 'MN', 1e6),
  /** A pull in "lb" is a force: weak links and cable ratings are printed so. */
  unit('force', 'lbf', POUND_FORCE_N, 'lb'),
  unit('force', 'kip', POUND_FORCE_N * 1e3, 'kips'),
  unit('force', 'kgf', GRAVITY_M_PER_S2),
  unit('force', 'tonf', POUND_FORCE_N * 2000),

  unit('energy', 'J', 1, 'N-m'),
  unit('energy', 'mJ', 1e-3),
  unit('energy', 'kJ', 1e3, 'kN-m'),
  unit('energy', 'MJ', 1e6),
  unit(
    'energy',
    'ft-lb',
    FOOT_POUND_J,
    'ft lb',
    'ftlb',
    'ft-lbf',
    'ft lbf',
    'lbf-ft',
    'lb-ft',
    'lbf ft',
    'lb ft',
  ),
  unit('energy', 'in-lb', POUND_FORCE_N * INCH_M, 'in lb', 'in-lbf', 'in lbf'),
  unit('energy', 'kWh', 3.6e6),

  unit('power', 'W', 1),
  unit('power', 'mW', 1e-3),
  unit('power', 'kW', 1e3),
  unit('power', 'MW', 1e6),
  unit('power', 'hp', 550 * FOOT_POUND_J),

  ...pressure('Pa', 1),
  ...pressure('mPa', 1e-3),
  ...pressure('kPa', 1e3),
  ...pressure('MPa', 1e6),
  ...pressure('bar', 1e5),
  ...pressure('mbar', 100),
  ...pressure('psi', PSI_PA),
  unit('pressure', 'hPa', 100),
  unit('pressure', 'GPa', 1e9),
  unit('pressure', 'N/m2', 1),
  unit('pressure', 'kN/m2', 1e3),
  unit('pressure', 'MN/m2', 1e6),
  unit('pressure', 'N/mm2', 1e6),
  unit('pressure', 'kgf/cm2', GRAVITY_M_PER_S2 * 1e4, 'kg/cm2'),
  unit('pressure', 'ksi', PSI_PA * 1e3),
  unit('pressure', 'lbf/in2', PSI_PA, 'lb/in2'),
  unit('pressure', 'psf', PSF_PA, 'lbf/ft2', 'lb/ft2'),
  unit('pressure', 'ksf', PSF_PA * 1e3, 'kip/ft2'),
  unit('pressure', 'tsf', PSF_PA * 2000, 'ton/ft2', 'tons/ft2'),
  unit('pressure', 'atm', ATMOSPHERE_PA),
  unit('pressure', 'torr', ATMOSPHERE_PA / 760),
  unit('pressure', 'mmHg', MERCURY_PA_PER_M * 1e-3, 'mm Hg'),
  unit('pressure', 'inHg', MERCURY_PA_PER_M * INCH_M, 'in Hg', '"Hg', '" Hg', 'in-Hg'),
  unit('pressure', 'inH2O', WATER_PA_PER_M * INCH_M, 'in H2O', 'in wc', '"wc', '" wc'),
  { ...unit('pressure', 'psid', PSI_PA, 'psi diff'), datum: 'difference' },

  unit('volumeFlow', 'm3/s', 1),
  unit('volumeFlow', 'm3/min', 1 / MINUTE_S),
  unit('volumeFlow', 'm3/h', 1 / HOUR_S),
  unit('volumeFlow', 'L/s', 1e-3, 'lps'),
  unit('volumeFlow', 'L/min', 1e-3 / MINUTE_S, 'lpm'),
  unit('volumeFlow', 'L/h', 1e-3 / HOUR_S),
  unit('volumeFlow', 'mL/h', 1e-6 / HOUR_S),
  unit('volumeFlow', 'mL/min', 1e-6 / MINUTE_S),
  unit('volumeFlow', 'cfm', FOOT_M ** 3 / MINUTE_S, 'ft3/min', 'scfm', 'acfm', 'icfm'),
  unit('volumeFlow', 'ft3/s', FOOT_M ** 3, 'cfs'),
  unit('volumeFlow', 'ft3/h', FOOT_M ** 3 / HOUR_S, 'cfh'),
  unit('volumeFlow', 'gpm', GALLON_M3 / MINUTE_S, 'gal/min'),
  unit('volumeFlow', 'gal/h', GALLON_M3 / HOUR_S, 'gph'),
  unit('conductance', 'm3/(s-Pa)', 1, 'm3/(s Pa)', 'm3/s/Pa'),
  unit('conductance', 'L/(s-bar)', 1e-8, 'L/(s bar)', 'L/s/bar', 'dm3/(s-bar)', 'dm3/(s bar)', 'dm3/s/bar'),
  scale('K', 1, 0),
  scale('°C', 1, 273.15, 'C'),
  scale('°F', RANKINE_K, 459.67, 'F'),
  scale('°R', RANKINE_K, 0),

  unit('temperatureDifference', 'K', 1),
  unit('temperatureDifference', '°C', 1, 'C', 'C°'),
  unit('temperatureDifference', '°F', RANKINE_K, 'F', 'F°', '°R'),

  unit('angle', 'rad', 1),
  unit('angle', 'mrad', 1e-3),
  unit('angle', 'deg', DEGREE_RAD, '°'),
  unit('angle', 'arcmin', DEGREE_RAD / 60, "'"),
  unit('angle', 'arcsec', DEGREE_RAD / 3600, '"'),

  unit('frequency', 'Hz', 1, '1/s', '/s', 'blow/s'),
  unit('frequency', 'kHz', 1e3),
  unit('frequency', 'bpm', 1 / MINUTE_S, 'blow/min', '1/min', '/min', 'rpm'),

  unit('drift', 'rad/m^0.5', 1),
  unit('drift', 'mrad/m^0.5', 1e-3),
  unit('drift', 'deg/m^0.5', DEGREE_RAD, '°/m^0.5'),
  unit('expansion', '1/K', 1, '/K', '/°C', '1/°C', '/C', '1/C', 'm/m/K', 'm/m/°C'),
  unit('expansion', 'mm/m/K', 1e-3, 'mm/m/°C', 'mm/(m-K)', 'mm/m-K'),
  unit('expansion', '1/°F', 1 / RANKINE_K, '/°F', '/F', '1/F', 'in/in/°F', 'in/in/F'),
  unit('perLength', '1/m', 1, '/m'),
  unit('perLength', '1/mm', 1e3, '/mm'),
  unit('perLength', '1/ft', 1 / FOOT_M, '/ft'),
  unit('perLength', '1/in', 1 / INCH_M, '/in'),
  unit('ratio', '', 1),
  unit('ratio', '%', 1e-2),
  unit('ratio', '‰', 1e-3),
  unit('count', '', 1),
  unit('count', 'dB', 1, 'dBA', 'dB(A)', 'dB A'),
]

export function toSi(value: number, from: Unit): number {
  const shifted = value + from.offset
  return from.fraction ? (shifted * from.fraction.top) / from.fraction.divisor : shifted * from.factor
}

export function fromSi(valueSi: number, to: Unit): number {
  const shifted = to.fraction ? (valueSi * to.fraction.divisor) / to.fraction.top : valueSi / to.factor
  return shifted - to.offset
}
