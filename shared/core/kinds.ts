/**
 * The kinds of quantity the engine knows, each with the tail its names carry and its SI unit.
 * A relation's inputs and outputs are declared by kind; the tail then becomes part of the property's name by type,
 * so that a number whose name does not say its unit does not compile.
 */
export const KINDS = {
  length: { tail: 'M', unit: 'm' },
  /** Along-axis sizes of a cross-section: told apart from `length` because US practice writes them in inches. */
  diameter: { tail: 'M', unit: 'm' },
  /** Distances below ground. */
  depth: { tail: 'M', unit: 'm' },
  /** Small movements and wear: shown in mm or thousandths of an inch. */
  movement: { tail: 'M', unit: 'm' },
  altitude: { tail: 'M', unit: 'm' },
  area: { tail: 'M2', unit: 'm2' },
  volume: { tail: 'M3', unit: 'm3' },
  duration: { tail: 'S', unit: 's' },
  speed: { tail: 'MPerS', unit: 'm/s' },
  /** Peak particle velocity: a speed shown in mm/s or in/s. */
  particleVelocity: { tail: 'MPerS', unit: 'm/s' },
  /** Wear over time of use: shown in mm/h or thousandths of an inch an hour. */
  wearRate: { tail: 'MPerS', unit: 'm/s' },
  mass: { tail: 'Kg', unit: 'kg' },
  massFlow: { tail: 'KgPerS', unit: 'kg/s' },
  density: { tail: 'KgPerM3', unit: 'kg/m3' },
  unitWeight: { tail: 'NPerM3', unit: 'N/m3' },
  force: { tail: 'N', unit: 'N' },
  energy: { tail: 'J', unit: 'J' },
  power: { tail: 'W', unit: 'W' },
  gaugePressure: { tail: 'GaugePa', unit: 'Pa' },
  absolutePressure: { tail: 'Pa', unit: 'Pa' },
  pressureDifference: { tail: 'Pa', unit: 'Pa' },
  /** Soil strength, stiffness and stress. */
  stress: { tail: 'Pa', unit: 'Pa' },
  volumeFlow: { tail: 'M3PerS', unit: 'm3/s' },
  /** What is burnt or fed: shown by the hour. */
  liquidFlow: { tail: 'M3PerS', unit: 'm3/s' },
  /** C of ISO 6358: volume of reference air per time and pressure. */
  conductance: { tail: 'M3PerSPa', unit: 'm3/(s-Pa)' },
  temperature: { tail: 'K', unit: 'K' },
  temperatureDifference: { tail: 'K', unit: 'K' },
  angle: { tail: 'Rad', unit: 'rad' },
  frequency: { tail: 'Hz', unit: 'Hz' },
  /** Heading drift of an unguided tool: radians per square root of a metre. */
  drift: { tail: 'RadPerSqrtM', unit: 'rad/m^0.5' },
  expansion: { tail: 'PerK', unit: '1/K' },
  resistancePerBlow: { tail: 'M', unit: 'm' },
  perLength: { tail: 'PerM', unit: '1/m' },
  ratio: { tail: '', unit: '1' },
  count: { tail: '', unit: '1' },
} as const satisfies Record<string, { readonly tail: string; readonly unit: string }>

export type Kind = keyof typeof KINDS
export type Tail<K extends Kind> = (typeof KINDS)[K]['tail']

/** A place on the ground, WGS84: longitude first, as GeoJSON has it. */
export type GeoPosition = readonly [longitudeDeg: number, latitudeDeg: number]
