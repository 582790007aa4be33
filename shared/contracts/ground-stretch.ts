import { z } from 'zod'
import { DUG, type GroundInput, STONES } from '../core/plan/crossing-input.ts'
import { type BareNumbers, choice, orNull, quantity, shortText } from './quantity-field.ts'

export const CONSISTENCIES = [
  'very soft',
  'soft',
  'firm',
  'medium stiff',
  'stiff',
  'very stiff',
  'hard',
  'very loose',
  'loose',
  'medium dense',
  'dense',
  'very dense',
] as const

const USCS = [
  'GW', 'GP', 'GM', 'GC', 'SW', 'SP', 'SM', 'SC', 'ML', 'CL', 'OL', 'MH', 'CH', 'OH', 'PT',
] as const // biome-ignore format: a table of symbols reads better in one row

/** One stretch of ground along the bore, in whatever words or measurements the user has. */
export const groundStretch = (bare: BareNumbers) =>
  z
    .strictObject({
      from: orNull(quantity('length', bare, { min: 0, max: 1000 })),
      to: orNull(quantity('length', bare, { min: 0, max: 1000 })),
      word: orNull(shortText(60)),
      uscs: orNull(choice(USCS)),
      sptN: orNull(z.number().min(0).max(200)),
      consistency: orNull(choice(CONSISTENCIES)),
      undrainedStrength: orNull(quantity('stress', bare, { min: 500, max: 2e6 })),
      relativeDensity: orNull(quantity('ratio', bare, { min: 0, max: 1 })),
      frictionAngle: orNull(quantity('angle', bare, { min: 0.26, max: 0.96 })),
      dcp: orNull(quantity('resistancePerBlow', bare, { min: 0.0005, max: 0.3 })),
      pocketPenetrometer: orNull(quantity('stress', bare, { min: 1000, max: 2e6 })),
      vane: orNull(quantity('stress', bare, { min: 500, max: 2e6 })),
      dug: orNull(choice(DUG)),
      stones: orNull(choice(STONES)),
      waterTable: orNull(quantity('depth', bare, { min: 0, max: 100 })),
      fill: z.boolean().optional(),
      frozen: z.boolean().optional(),
    })
    .transform(
      (g): GroundInput => ({
        fromM: g.from,
        toM: g.to,
        word: g.word,
        uscs: g.uscs,
        sptN: g.sptN,
        consistency: g.consistency,
        undrainedStrengthPa: g.undrainedStrength,
        relativeDensity: g.relativeDensity,
        frictionAngleRad: g.frictionAngle,
        dcpMPerBlow: g.dcp,
        pocketPenetrometerPa: g.pocketPenetrometer,
        vanePa: g.vane,
        dug: g.dug,
        stones: g.stones,
        waterTableM: g.waterTable,
        fill: g.fill ?? false,
        frozen: g.frozen ?? false,
      }),
    )
