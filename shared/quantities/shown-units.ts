import type { Kind } from '../core/kinds.ts'

export type UnitSystem = 'us' | 'si'

/** Up to which size (SI, exclusive) a style is used. */
type Sized = { readonly below?: number }

/** How one kind of quantity is written in one system; the last row takes the rest. */
export type Style = Sized &
  (
    | { readonly unit: string; readonly step: number; readonly bareZeros?: true }
    /** `pad` keeps the zero of 2.0: rates stand in columns of good, likely and bad. */
    | { readonly unit: string; readonly significant: number; readonly pad?: true }
    | { readonly write: 'feet-inches' | 'inches' | 'hours-minutes' }
  )

type Styles = readonly [Style, ...Style[]]

const INCH_M = 0.0254
/** Past any bore, a length is a life or a street: whole feet, whole metres. */
const BEYOND_A_BORE_M = 305
/** The launch end: 0 ft, 0 m. */
const NOTHING_M = 1e-9
const FEET: Styles = [
  { below: NOTHING_M, unit: 'ft', step: 1 },
  { below: BEYOND_A_BORE_M, write: 'feet-inches' },
  { unit: 'ft', step: 1 },
]
const METRES: Styles = [
  { below: NOTHING_M, unit: 'm', step: 1 },
  { below: BEYOND_A_BORE_M, unit: 'm', step: 0.01 },
  { unit: 'm', step: 1 },
]
/** Contract: 1 min under 2 h, else 5 min. Above two days a time is a life in hours, not an appointment. */
const TIMES: Styles = [
  { below: 0.995, unit: 's', step: 0.01 },
  { below: 9.95, unit: 's', step: 0.1 },
  { below: 120, unit: 's', step: 1 },
  { below: 119.5 * 60, unit: 'min', step: 1 },
  { below: 48 * 3600, write: 'hours-minutes' },
  { unit: 'h', step: 1 },
]
const DRIFT: Styles = [{ unit: 'mrad/m^0.5', significant: 2 }]
const ANGLE: Styles = [
  { below: 0.01, unit: 'mrad', significant: 2 },
  { unit: 'deg', step: 0.1, bareZeros: true },
]
const NUMBER: Styles = [{ unit: '', significant: 3 }]
const COUNT: Styles = [{ unit: '', step: 0.1, bareZeros: true }]
/** Oil is fed by the millilitre everywhere. */
const OIL_FLOW: Style = { below: 1e-6, unit: 'mL/h', significant: 2 }
/** Blows are counted by the minute in both systems. */
const BLOWS: Styles = [{ unit: 'blows/min', significant: 2 }]
const NOTHING_M3_PER_S = 1e-12
const CFM_M3_PER_S = 0.3048 ** 3 / 60

/** Contract, Digits: pressures 1 psi / 0.1 bar, rates 2 significant digits; the rest by what the trade can measure. */
export const STYLES: Readonly<Record<UnitSystem, Readonly<Record<Kind, Styles>>>> = {
  us: {
    length: FEET,
    depth: FEET,
    diameter: [{ write: 'inches' }],
    movement: [
      // Roughness of a hose is finer than a thousandth; nothing at all is said as heave is.
      { below: NOTHING_M, unit: 'in', step: 0.01 },
      { below: 0.0095 * INCH_M, unit: 'in', significant: 2 },
      { below: 0.0995 * INCH_M, unit: 'in', step: 0.001 },
      { below: 9.95 * INCH_M, unit: 'in', step: 0.01 },
      { unit: 'in', step: 0.1 },
    ],
    altitude: [{ unit: 'ft', step: 1 }],
    area: [
      { below: 0.09, unit: 'in2', significant: 3 },
      { unit: 'ft2', significant: 3 },
    ],
    volume: [
      // What wear takes off; then what is poured; then what is dug.
      { below: 3e-6, unit: 'in3', significant: 2 },
      { below: 1e-3, unit: 'fl oz', significant: 2 },
      { below: 0.5, unit: 'gal', significant: 2 },
      { unit: 'ft3', significant: 3 },
    ],
    duration: TIMES,
    // One unit whatever the pace: a table of rates must not mix two.
    speed: [{ unit: 'ft/min', significant: 2, pad: true }],
    particleVelocity: [{ unit: 'in/s', significant: 2, pad: true }],
    wearRate: [{ unit: 'in/h', significant: 2, pad: true }],
    mass: [{ unit: 'lb', significant: 3 }],
    massFlow: [{ unit: 'lb/h', significant: 2 }],
    density: [{ unit: 'lb/ft3', significant: 3 }],
    unitWeight: [{ unit: 'pcf', step: 1 }],
    force: [
      { below: 4448, unit: 'lbf', step: 1 },
      { unit: 'lbf', significant: 3 },
    ],
    energy: [{ unit: 'ft-lb', significant: 3 }],
    power: [{ unit: 'hp', significant: 2 }],
    gaugePressure: [{ unit: 'psi', step: 1 }],
    absolutePressure: [{ unit: 'psia', step: 1 }],
    pressureDifference: [{ unit: 'psi', step: 1 }],
    stress: [
      { below: 1e6, unit: 'psf', significant: 3 },
      { unit: 'ksf', significant: 3 },
    ],
    volumeFlow: [
      { below: NOTHING_M3_PER_S, unit: 'cfm', step: 1 },
      OIL_FLOW,
      { below: 9.95 * CFM_M3_PER_S, unit: 'cfm', significant: 2 },
      { unit: 'cfm', step: 1 },
    ],
    liquidFlow: [{ unit: 'gal/h', significant: 2 }],
    conductance: [{ unit: 'L/(s-bar)', significant: 3 }],
    temperature: [{ unit: '°F', step: 1 }],
    temperatureDifference: [{ unit: '°F', step: 1 }],
    angle: ANGLE,
    frequency: BLOWS,
    drift: DRIFT,
    expansion: [{ unit: '1/°F', significant: 3 }],
    resistancePerBlow: [{ unit: 'in/blow', significant: 2 }],
    perLength: [{ unit: '1/ft', significant: 3 }],
    ratio: NUMBER,
    count: COUNT,
  },
  si: {
    length: METRES,
    depth: METRES,
    diameter: [{ unit: 'mm', step: 0.1, bareZeros: true }],
    movement: [
      { below: NOTHING_M, unit: 'mm', step: 0.1 },
      { below: 0.095e-3, unit: 'mm', significant: 2 },
      { below: 0.995e-3, unit: 'mm', step: 0.01 },
      { below: 9.95e-3, unit: 'mm', step: 0.1 },
      { unit: 'mm', step: 1 },
    ],
    altitude: [{ unit: 'm', step: 1 }],
    area: [
      { below: 1e-4, unit: 'mm2', significant: 3 },
      { below: 0.1, unit: 'cm2', significant: 3 },
      { unit: 'm2', significant: 3 },
    ],
    volume: [
      { below: 1e-6, unit: 'mm3', significant: 3 },
      { below: 1e-4, unit: 'cm3', significant: 3 },
      { below: 1, unit: 'L', significant: 3 },
      { unit: 'm3', significant: 3 },
    ],
    duration: TIMES,
    speed: [{ unit: 'm/min', significant: 2, pad: true }],
    particleVelocity: [{ unit: 'mm/s', significant: 2, pad: true }],
    wearRate: [{ unit: 'mm/h', significant: 2, pad: true }],
    mass: [{ unit: 'kg', significant: 3 }],
    massFlow: [{ unit: 'kg/h', significant: 2 }],
    density: [{ unit: 'kg/m3', significant: 3 }],
    unitWeight: [{ unit: 'kN/m3', step: 0.1 }],
    force: [
      { below: 1000, unit: 'N', step: 1 },
      { unit: 'kN', significant: 3 },
    ],
    energy: [
      { below: 9995, unit: 'J', significant: 3 },
      { unit: 'kJ', significant: 3 },
    ],
    power: [
      { below: 1000, unit: 'W', significant: 2 },
      { unit: 'kW', significant: 2 },
    ],
    gaugePressure: [{ unit: 'bar', step: 0.1 }],
    absolutePressure: [{ unit: 'bara', step: 0.1 }],
    pressureDifference: [{ unit: 'bar', step: 0.1 }],
    stress: [
      { below: 1e6, unit: 'kPa', significant: 3 },
      { unit: 'MPa', significant: 3 },
    ],
    volumeFlow: [
      { below: NOTHING_M3_PER_S, unit: 'm3/min', step: 1 },
      OIL_FLOW,
      { below: 0.0995 / 60, unit: 'L/min', significant: 2 },
      { below: 9.995 / 60, unit: 'm3/min', step: 0.01 },
      { unit: 'm3/min', step: 0.1 },
    ],
    liquidFlow: [{ unit: 'L/h', significant: 2 }],
    conductance: [{ unit: 'L/(s-bar)', significant: 3 }],
    temperature: [{ unit: '°C', step: 1 }],
    temperatureDifference: [{ unit: 'K', step: 1 }],
    angle: ANGLE,
    frequency: BLOWS,
    drift: DRIFT,
    expansion: [{ unit: '1/K', significant: 3 }],
    resistancePerBlow: [{ unit: 'mm/blow', significant: 2 }],
    perLength: [{ unit: '1/m', significant: 3 }],
    ratio: NUMBER,
    count: COUNT,
  },
}
