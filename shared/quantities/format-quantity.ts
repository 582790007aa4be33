import type { Kind } from '../core/kinds.ts'
import { feetAndInchesText, inchesText } from './feet-and-inches.ts'
import type { Style, UnitSystem } from './shown-units.ts'
import { STYLES } from './shown-units.ts'
import { unitOfKind } from './unit-spelling.ts'
import { fromSi } from './units.ts'

export type { UnitSystem } from './shown-units.ts'

export type FormatOptions = {
  /** Written in this unit, whatever the system's own choice; a unit the kind does not have is not used. */
  readonly unit?: string
  /** Significant digits with `unit`; three unless said. */
  readonly digits?: number
}

/** The text, and how far the true value may lie from it: half of the last digit or fraction shown, in SI. */
export type Shown = { readonly text: string; readonly withinSi: number }

/** What stands where no number exists. */
export const NO_NUMBER = '—'
const INCH_M = 0.0254
const LENGTH_PARTS = 4
const DIAMETER_PARTS = 16
/** Nearer than this to a sixteenth, in inches, a size is written as the fraction: 1.315 in is no 1-5/16. */
const NEAR_FRACTION_IN = 0.0005
const FIVE_MINUTES_S = 300

/** A quantity as a person reads it, number and unit, by the digits rule of the kind. Pure; no language, no locale. */
export function formatQuantity(
  valueSi: number,
  kind: Kind,
  system: UnitSystem,
  options: FormatOptions = {},
): string {
  return shownQuantity(valueSi, kind, system, options).text
}

export function shownQuantity(
  valueSi: number,
  kind: Kind,
  system: UnitSystem,
  options: FormatOptions = {},
): Shown {
  if (!Number.isFinite(valueSi)) return { text: NO_NUMBER, withinSi: 0 }
  if (options.unit !== undefined && unitOfKind(options.unit, kind)) {
    return show(valueSi, kind, { unit: options.unit, significant: options.digits ?? 3 })
  }
  const styles = STYLES[system][kind]
  const size = Math.abs(valueSi)
  const style = styles.find((each) => each.below === undefined || size < each.below) ?? styles[0]
  return show(valueSi, kind, style)
}

function show(valueSi: number, kind: Kind, style: Style): Shown {
  if ('write' in style) {
    if (style.write === 'hours-minutes') return hoursAndMinutes(valueSi)
    return style.write === 'inches' ? diameterInInches(valueSi) : feetAndInches(valueSi)
  }
  const unit = unitOfKind(style.unit, kind)
  if (!unit) return { text: NO_NUMBER, withinSi: 0 }
  const value = fromSi(valueSi, unit)
  const halfStep = ('step' in style ? style.step : lastDigit(value, style.significant)) / 2
  const withinSi = halfStep * unit.factor
  const number =
    'step' in style
      ? stepText(value, style.step, style.bareZeros === true)
      : significantText(value, style.significant, style.pad === true)
  return { text: withUnit(number, style.unit), withinSi }
}

function feetAndInches(valueM: number): Shown {
  const text = feetAndInchesText(fromSi(valueM, INCH) + 0, LENGTH_PARTS)
  return { text, withinSi: INCH_M / LENGTH_PARTS / 2 }
}

function diameterInInches(valueM: number): Shown {
  const inches = fromSi(valueM, INCH)
  const sixteenths = Math.round(inches * DIAMETER_PARTS) / DIAMETER_PARTS
  const near = Math.abs(inches - sixteenths) < NEAR_FRACTION_IN
  const text = near ? inchesText(inches, DIAMETER_PARTS) : `${stepText(inches, 0.001, true)} in`
  return { text, withinSi: NEAR_FRACTION_IN * INCH_M }
}

const INCH = unitOfKind('in', 'length') ?? raise('the unit table has no inch')

function raise(message: string): never {
  throw new Error(message)
}

function hoursAndMinutes(valueS: number): Shown {
  const minutes = Math.round(Math.abs(valueS) / FIVE_MINUTES_S) * 5
  const hours = Math.floor(minutes / 60)
  const rest = minutes % 60
  const text = rest === 0 ? `${hours} h` : `${hours} h ${rest} min`
  return { text: valueS < 0 ? `-${text}` : text, withinSi: FIVE_MINUTES_S / 2 }
}

/** Rounded to a number of significant digits. */
export function significant(value: number, digits: number): number {
  return Number.isFinite(value) && value !== 0 ? Number(value.toPrecision(digits)) : value
}

/** What one unit of the last of so many digits is worth: 0.01 for 1.23. */
function lastDigit(value: number, digits: number): number {
  const rounded = significant(value, digits)
  return rounded === 0 ? 0 : 10 ** (Math.floor(Math.log10(Math.abs(rounded)) + 1e-12) - digits + 1)
}

function significantText(value: number, digits: number, pad: boolean): string {
  const rounded = significant(value, digits)
  if (!pad || rounded === 0) return String(rounded + 0)
  const decimals = digits - 1 - Math.floor(Math.log10(Math.abs(rounded)) + 1e-12)
  return decimals > 0 && decimals <= 20 ? rounded.toFixed(decimals) : String(rounded)
}

/** Rounded to a step of 1, 0.1, 0.01 … */
function stepText(value: number, step: number, bareZeros: boolean): string {
  const decimals = Math.max(0, Math.round(-Math.log10(step)))
  if (Math.abs(value) >= 1e15) return String(value)
  const text = value.toFixed(decimals)
  const signed = Number(text) === 0 ? text.replace('-', '') : text
  return bareZeros && decimals > 0 ? signed.replace(/\.?0+$/, '') : signed
}

/** Units as they look in print: m³/min, mrad/√m, 12.5° without a space. */
function withUnit(number: string, unit: string): string {
  if (unit === '') return number
  if (unit === 'deg') return `${number}°`
  const printed = unit
    .replace('m^0.5', '√m')
    .replace(/([a-z])2(?=\/|$)/g, '$1²')
    .replace(/([a-z])3(?=\/|$)/g, '$1³')
  return `${number} ${printed}`
}
