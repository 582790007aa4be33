import { z } from 'zod'
import type { Issue, Outcome } from '../core/outcome.ts'
import {
  type CrossingInput,
  DEPTH_DATUMS,
  END_KINDS,
  HEADS,
  OVER_KINDS,
  type PipeInput,
  PULL_METHODS,
  type ToolInput,
} from '../core/plan/crossing-input.ts'
import { groundStretch } from './ground-stretch.ts'
import { addIssue, type BareNumbers, choice, orNull, quantity, shortText } from './quantity-field.ts'
import { rates } from './rate-book.ts'
import { locate, utilitiesAsked, utility } from './utilities.ts'
import { parseWith } from './zod-issues.ts'

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

const line = (bare: BareNumbers) =>
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
      addIssue(ctx, { code: 'inputs-conflict', accepted: 'a length, or launch and reception positions' })
      return z.NEVER
    })

const depth = (bare: BareNumbers) =>
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

const end = (bare: BareNumbers) =>
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

const PIT = { kind: 'pit', thicknessM: null, footingDepthM: null, isSaid: false } as const

const pipe = (bare: BareNumbers) =>
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

const tool = (bare: BareNumbers) =>
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

const air = (bare: BareNumbers) =>
  z
    .strictObject({
      compressor: z.strictObject({
        freeAirDelivery: quantity('volumeFlow', bare, { min: 1e-4, max: 2 }),
        pressure: quantity('gaugePressure', bare, { min: 1e5, max: 2.5e6 }),
      }),
      hoses: z
        .array(
          z.strictObject({
            bore: quantity('diameter', bare, { min: 0.003, max: 0.3 }),
            length: quantity('length', bare, { min: 0.1, max: 1000 }),
          }),
        )
        .min(1)
        .max(20),
      lubricator: orNull(z.boolean()),
      altitude: orNull(quantity('altitude', bare, { min: -500, max: 6000 })),
      temperature: orNull(quantity('temperature', bare, { min: 223.15, max: 333.15 })),
      tools: z.number().int().min(1).max(12).optional(),
    })
    .transform((a): CrossingInput['air'] => ({
      compressor: { freeAirDeliveryM3PerS: a.compressor.freeAirDelivery, gaugePa: a.compressor.pressure },
      hoses: a.hoses.map((hose) => ({ boreM: hose.bore, lengthM: hose.length })),
      lubricator: a.lubricator,
      altitudeM: a.altitude,
      temperatureK: a.temperature,
      tools: a.tools ?? 1,
    }))

/** The crossing file, underlane/crossing@1. `bare` says what a number without a unit means in this file. */
export const crossingSchema = (bare: BareNumbers) =>
  z
    .strictObject({
      schema: z.literal('underlane/crossing@1').optional(),
      units: choice(['si', 'us']).optional(),
      name: shortText(200),
      line: line(bare),
      depth: depth(bare),
      grade: orNull(quantity('ratio', bare, { min: 0.0005, max: 0.5 })),
      shots: z
        .array(
          z.strictObject({
            to: station(bare),
            depth: orNull(quantity('depth', bare, { min: 0.05, max: 15 })),
          }),
        )
        .max(60)
        .optional(),
      ends: z.strictObject({ launch: end(bare).optional(), reception: end(bare).optional() }).optional(),
      over: z
        .array(
          z.strictObject({ from: station(bare), to: station(bare), kind: choice(OVER_KINDS, SURFACE_WORDS) }),
        )
        .max(60)
        .optional(),
      surface: z
        .array(
          z.strictObject({
            station: station(bare),
            level: quantity('length', bare, { min: -500, max: 9000 }),
          }),
        )
        .max(200)
        .optional(),
      ground: z.array(groundStretch(bare)).min(1).max(40),
      pipes: z.array(pipe(bare)).min(1).max(12),
      pull: orNull(choice(PULL_METHODS)),
      tool: tool(bare),
      air: air(bare),
      utilities: z.array(utility(bare)).max(100).optional(),
      utilitiesAsked: utilitiesAsked.optional(),
      locate: locate.optional(),
      rates: rates.optional(),
      spread: z
        .strictObject({
          seed: z.number().int().min(0).max(4294967295).optional(),
          draws: z.number().int().min(64).max(65536).optional(),
        })
        .optional(),
    })
    .transform(
      (c): CrossingInput => ({
        name: c.name,
        line: c.line,
        depth: c.depth,
        grade: c.grade,
        shots: (c.shots ?? []).map((shot) => ({ toM: shot.to, depthM: shot.depth })),
        ends: { launch: c.ends?.launch ?? PIT, reception: c.ends?.reception ?? PIT },
        over: (c.over ?? []).map((reach) => ({ fromM: reach.from, toM: reach.to, kind: reach.kind })),
        surface: (c.surface ?? []).map((point) => ({ stationM: point.station, levelM: point.level })),
        ground: c.ground,
        pipes: c.pipes,
        pull: c.pull,
        tool: c.tool,
        air: c.air,
        utilities: c.utilities ?? null,
        utilitiesAsked: c.utilitiesAsked ?? null,
        locate: c.locate ?? null,
        rates: c.rates ?? null,
        spread: { seed: c.spread?.seed ?? 1, draws: c.spread?.draws ?? 1024 },
      }),
    ) satisfies z.ZodType<CrossingInput>

const SCHEMAS = { refuse: crossingSchema('refuse'), si: crossingSchema('si'), us: crossingSchema('us') }

const notAnObject: Issue = { path: '', code: 'wrong-type', accepted: 'a crossing: a JSON object' }

/** A crossing file as parsed JSON → the engine's input, or every problem with its path. Never throws. */
export function parseCrossing(document: unknown): Outcome<CrossingInput> {
  if (document === null || typeof document !== 'object' || Array.isArray(document)) {
    return { ok: false, issues: [notAnObject] }
  }
  const units = 'units' in document ? document.units : undefined
  return parseWith(SCHEMAS[units === 'si' || units === 'us' ? units : 'refuse'], document)
}
