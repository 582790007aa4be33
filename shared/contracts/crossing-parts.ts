import { z } from 'zod'
import {
  type CrossingInput,
  DEPTH_DATUMS,
  END_KINDS,
  HEADS,
  OVER_KINDS,
  type PipeInput,
  type ToolInput,
} from '../core/plan/crossing-input.ts'
import { addIssue, type BareNumbers, choice, orNull, quantity, shortText } from './quantity-field.ts'

const position = z.tuple([z.number().min(-180).max(180), z.number().min(-90).max(90)])
const station = (bare: BareNumbers) => quantity('length', bare, { min: 0, max: 1000 })

/** What people call a surface. */
const SURFACE_WORDS = {
  asphalt: 'road',
  blacktop: 'road',
  street: 'road',
  pavement: 'road',
  concrete: 'slab',
  sidewalk: 'walk',
  footpath: 'walk',
  driveway: 'drive',
  grass: 'lawn',
  turf: 'lawn',
  garden: 'lawn',
  bricks: 'pavers',
} as const

const DATUM_MEANS = {
  centre: 'depths are to the centre of the bore',
  top: 'depths are to the top of the pipe',
  bottom: 'depths are to the underside of the bore',
  floor: 'depths are to the floor of the pits',
} as const

export const line = (bare: BareNumbers) =>
  z
    .strictObject({
      length: orNull(quantity('length', bare, { min: 0.3, max: 1000 })),
      launch: orNull(position),
      reception: orNull(position),
    })
    .transform((l, ctx): CrossingInput['line'] => {
      if (l.length !== null && l.launch === null && l.reception === null) return { lengthM: l.length }
      if (l.length === null && l.launch !== null && l.reception !== null)
        return { launch: l.launch, reception: l.reception }
      const isSilent = l.length === null && l.launch === null && l.reception === null
      addIssue(ctx, {
        code: isSilent ? 'required' : 'inputs-conflict',
        accepted: 'a length, or launch and reception positions',
      })
      return z.NEVER
    })

export const depth = (bare: BareNumbers) =>
  z
    .strictObject({
      launch: quantity('depth', bare, { min: 0.05, max: 15 }),
      reception: quantity('depth', bare, { min: 0.05, max: 15 }),
      to: orNull(choice(DEPTH_DATUMS, { center: 'centre', axis: 'centre' })),
    })
    .transform((d, ctx): CrossingInput['depth'] => {
      if (d.to === null) {
        addIssue(
          ctx,
          { code: 'ask', candidates: DEPTH_DATUMS.map((value) => ({ value, means: DATUM_MEANS[value] })) },
          ['to'],
        )
        return z.NEVER
      }
      return { launchM: d.launch, receptionM: d.reception, to: d.to }
    })

export const end = (bare: BareNumbers) =>
  z
    .strictObject({
      kind: choice(END_KINDS),
      thickness: orNull(quantity('diameter', bare, { min: 0.02, max: 3 })),
      footingDepth: orNull(quantity('depth', bare, { min: 0, max: 15 })),
    })
    .transform((e) => ({
      kind: e.kind,
      thicknessM: e.thickness,
      footingDepthM: e.footingDepth,
      isSaid: true,
    }))

export const PIT = { kind: 'pit', thicknessM: null, footingDepthM: null, isSaid: false } as const

export const pipe = (bare: BareNumbers) =>
  z
    .strictObject({
      system: orNull(shortText(40)),
      size: orNull(shortText(20)),
      sdr: orNull(z.number().min(3).max(60)),
      wall: orNull(shortText(20)),
      outsideDiameter: orNull(quantity('diameter', bare, { min: 0.002, max: 1 })),
      largestDiameter: orNull(quantity('diameter', bare, { min: 0.002, max: 1 })),
      count: z.number().int().min(1).max(12).optional(),
      material: orNull(choice(['pe2708', 'pe3608', 'pe4710'])),
      coilLength: orNull(quantity('length', bare, { min: 1, max: 3000 })),
    })
    .transform((p, ctx): PipeInput => {
      if (p.outsideDiameter === null && (p.system === null || p.size === null)) {
        addIssue(ctx, { code: 'required', accepted: 'a system and a size, or an outside diameter' }, [
          p.system === null ? 'system' : 'size',
        ])
      }
      return {
        system: p.system,
        size: p.size,
        wall: p.wall ?? (p.sdr === null ? null : String(p.sdr)),
        outsideDiameterM: p.outsideDiameter,
        largestDiameterM: p.largestDiameter,
        count: p.count ?? 1,
        material: p.material,
        coilLengthM: p.coilLength,
      }
    })

export const tool = (bare: BareNumbers) =>
  z
    .strictObject({
      id: z.string().optional(),
      diameter: quantity('diameter', bare, { min: 0.025, max: 0.4 }),
      length: orNull(quantity('length', bare, { min: 0.3, max: 5 })),
      mass: orNull(quantity('mass', bare, { min: 1, max: 2000 })),
      blowEnergy: orNull(quantity('energy', bare, { min: 1, max: 5000 })),
      blowRate: orNull(quantity('frequency', bare, { min: 0.5, max: 60 })),
      airDemand: orNull(quantity('volumeFlow', bare, { min: 1e-4, max: 1 })),
      ratedPressure: orNull(quantity('gaugePressure', bare, { min: 1e5, max: 2.5e6 })),
      head: orNull(choice(HEADS)),
      reversible: orNull(z.boolean()),
    })
    .transform((t, ctx): ToolInput => {
      if (t.id !== undefined) {
        addIssue(
          ctx,
          { code: 'not-available', given: t.id.slice(0, 60), accepted: 'a diameter and what else is known' },
          ['id'],
        )
      }
      return {
        diameterM: t.diameter,
        lengthM: t.length,
        massKg: t.mass,
        blowEnergyJ: t.blowEnergy,
        blowRateHz: t.blowRate,
        airDemandM3PerS: t.airDemand,
        ratedGaugePa: t.ratedPressure,
        head: t.head,
        reversible: t.reversible,
      }
    })

export const shots = (bare: BareNumbers) =>
  z
    .array(
      z
        .strictObject({ to: station(bare), depth: orNull(quantity('depth', bare, { min: 0.05, max: 15 })) })
        .transform((shot) => ({ toM: shot.to, depthM: shot.depth })),
    )
    .max(12)

export const over = (bare: BareNumbers) =>
  z
    .array(
      z
        .strictObject({ from: station(bare), to: station(bare), kind: choice(OVER_KINDS, SURFACE_WORDS) })
        .transform((reach) => ({ fromM: reach.from, toM: reach.to, kind: reach.kind })),
    )
    .max(12)

export const surface = (bare: BareNumbers) =>
  z
    .array(
      z
        .strictObject({ station: station(bare), level: quantity('length', bare, { min: -500, max: 9000 }) })
        .transform((point) => ({ stationM: point.station, levelM: point.level })),
    )
    .max(200)

export const spread = z
  .strictObject({
    seed: z.number().int().min(0).max(4294967295).optional(),
    draws: z.number().int().min(64).max(65536).optional(),
  })
  .transform((given) => ({ seed: given.seed ?? 1, draws: given.draws ?? 1024 }))
