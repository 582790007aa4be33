import { z } from 'zod'
import { ENGINES } from '../core/air/engine-power.ts'
import { AIR_REFERENCES } from '../core/air/site-air.ts'
import { type AirBranchInput, type AirInput, type HoseInput, VALVE_KINDS } from '../core/plan/air-input.ts'
import { parseQuantity } from '../quantities/parse-quantity.ts'
import { airBranchIssues } from './air-branches.ts'
import { addIssue, type BareNumbers, choice, orNull, quantity, shortText } from './quantity-field.ts'

/** 20 psi: no piercing tool runs on less, so a lower figure is more likely bar, or absolute. */
const SURELY_GAUGE_PA = 137_895
const SAYS_GAUGE = /(g|gauge|\(g\))\s*$/i

/** A set pressure; one too low for any tool is asked about unless it says gauge itself. */
const setPressure = (bare: BareNumbers) =>
  z
    .unknown()
    .transform((given, ctx): unknown => {
      const parsed = parseQuantity(given, 'gaugePressure', { bare })
      if (!parsed.ok || parsed.valueSi >= SURELY_GAUGE_PA || parsed.valueSi <= 0) return given
      if (typeof given === 'string' && SAYS_GAUGE.test(given)) return given
      const number = /^[\d.]+/.exec(String(given).trim())?.[0] ?? ''
      const unit = /bar/i.test(String(given)) ? 'bar' : 'psi'
      const candidates = [{ value: `${number} ${unit}g`, means: 'gauge, and really as low as that' }]
      if (unit === 'psi') candidates.push({ value: `${number} bar`, means: 'bar, not psi' })
      addIssue(ctx, { code: 'ask', given: String(given), candidates })
      return z.NEVER
    })
    .pipe(quantity('gaugePressure', bare, { min: 1e4, max: 2.5e6 }))

const hoseBore = (bare: BareNumbers) => quantity('diameter', bare, { min: 0.003, max: 0.3 })
const hoseLength = (bare: BareNumbers) => quantity('length', bare, { min: 0.1, max: 1000 })

/** The keys of a hose, in a crossing and on the shelf. */
export const hoseKeys = (bare: BareNumbers) => ({
  bore: hoseBore(bare),
  length: hoseLength(bare),
  couplings: orNull(z.number().int().min(0).max(40)),
  couplingBore: orNull(hoseBore(bare)),
  ratedPressure: orNull(quantity('gaugePressure', bare, { min: 1e5, max: 1e7 })),
  parallel: z.number().int().min(1).max(4).optional(),
  lossFactor: orNull(z.number().min(0.05).max(20)),
  measuredOn: orNull(z.iso.date()),
})

const hose = (bare: BareNumbers) =>
  z.strictObject(hoseKeys(bare)).transform((h, ctx): HoseInput => {
    if (h.couplingBore !== null && h.couplingBore > h.bore) {
      addIssue(ctx, { code: 'inputs-conflict', accepted: 'a coupling no wider than its hose' }, [
        'couplingBore',
      ])
    }
    return {
      boreM: h.bore,
      lengthM: h.length,
      couplings: h.couplings,
      couplingBoreM: h.couplingBore,
      ratedGaugePa: h.ratedPressure,
      parallel: h.parallel ?? 1,
      lossFactor: h.lossFactor,
      measuredOn: h.measuredOn,
    }
  })

/** The keys of an oiler or separator, in a crossing and on the shelf. */
const componentKeys = (bare: BareNumbers) => ({
  conductance: orNull(quantity('conductance', bare, { min: 1e-10, max: 1e-4 })),
  criticalRatio: orNull(z.number().min(0).max(0.9)),
  loss: orNull(quantity('pressureDifference', bare, { min: 10, max: 5e5 })),
  at: orNull(quantity('volumeFlow', bare, { min: 1e-4, max: 2 })),
})

/** Where only C is printed: what an oiler of its kind has. Our judgement. */
const USUAL_CRITICAL_RATIO = 0.3

export const component = (bare: BareNumbers) =>
  z.strictObject(componentKeys(bare)).transform((c, ctx): AirInput['oiler'] & object => {
    if (c.conductance !== null && c.loss === null && c.at === null) {
      return { conductanceM3PerSPa: c.conductance, criticalRatio: c.criticalRatio ?? USUAL_CRITICAL_RATIO }
    }
    if (c.conductance === null && c.loss !== null && c.at !== null) return { lossPa: c.loss, atM3PerS: c.at }
    addIssue(ctx, { code: 'inputs-conflict', accepted: 'a conductance, or a loss and the flow it is at' })
    return z.NEVER
  })

const compressor = (bare: BareNumbers) =>
  z
    .strictObject({
      freeAirDelivery: quantity('volumeFlow', bare, { min: 1e-4, max: 2 }),
      pressure: setPressure(bare),
      unloadPressure: orNull(quantity('gaugePressure', bare, { min: 1e4, max: 3e6 })),
      reference: orNull(choice(AIR_REFERENCES)),
      engine: orNull(choice(ENGINES, { turbocharged: 'turbo', 'naturally aspirated': 'aspirated' })),
    })
    .transform((c, ctx): AirInput['compressor'] => {
      if (c.unloadPressure !== null && c.unloadPressure < c.pressure) {
        addIssue(ctx, { code: 'inputs-conflict', accepted: 'an unloading pressure above the set one' }, [
          'unloadPressure',
        ])
      }
      return {
        freeAirDeliveryM3PerS: c.freeAirDelivery,
        gaugePa: c.pressure,
        unloadGaugePa: c.unloadPressure,
        reference: c.reference ?? 'inlet',
        engine: c.engine,
      }
    })

const branch = (bare: BareNumbers) =>
  z
    .strictObject({
      name: shortText(40),
      from: orNull(shortText(40)),
      hoses: z.array(hose(bare)).max(10).optional(),
      regulator: orNull(quantity('gaugePressure', bare, { min: 1e4, max: 2.5e6 })),
      tool: orNull(
        z.strictObject({
          airDemand: quantity('volumeFlow', bare, { min: 1e-4, max: 1 }),
          ratedPressure: orNull(quantity('gaugePressure', bare, { min: 1e5, max: 2.5e6 })),
        }),
      ),
    })
    .transform(
      (b): AirBranchInput => ({
        name: b.name,
        from: b.from,
        hoses: b.hoses ?? [],
        regulatorGaugePa: b.regulator,
        tool:
          b.tool === null ? null : { airDemandM3PerS: b.tool.airDemand, ratedGaugePa: b.tool.ratedPressure },
      }),
    )

export const air = (bare: BareNumbers) =>
  z
    .strictObject({
      compressor: compressor(bare),
      separator: orNull(component(bare)),
      valves: z
        .array(z.strictObject({ kind: choice(VALVE_KINDS), bore: hoseBore(bare) }))
        .max(10)
        .optional(),
      regulator: orNull(quantity('gaugePressure', bare, { min: 1e4, max: 2.5e6 })),
      hoses: z.array(hose(bare)).min(1).max(20),
      lubricator: orNull(z.boolean()),
      oiler: orNull(component(bare)),
      whip: orNull(z.strictObject({ bore: hoseBore(bare), length: hoseLength(bare) })),
      receiver: orNull(quantity('volume', bare, { min: 1e-4, max: 100 })),
      branches: z.array(branch(bare)).max(12).optional(),
      altitude: orNull(quantity('altitude', bare, { min: -500, max: 6000 })),
      temperature: orNull(quantity('temperature', bare, { min: 223.15, max: 333.15 })),
      humidity: orNull(quantity('ratio', bare, { min: 0, max: 1 })),
      tools: z.number().int().min(1).max(12).optional(),
      exponent: orNull(z.number().min(0).max(3)),
    })
    .transform((a, ctx): AirInput => {
      const branches = a.branches ?? []
      for (const { path, ...issue } of airBranchIssues(branches, a.tools)) addIssue(ctx, issue, path)
      if (a.oiler !== null && a.lubricator === false) {
        addIssue(ctx, { code: 'inputs-conflict', accepted: 'an oiler, or none in the line' }, ['oiler'])
      }
      return {
        compressor: a.compressor,
        separator: a.separator,
        valves: (a.valves ?? []).map(({ kind, bore }) => ({ kind, boreM: bore })),
        regulatorGaugePa: a.regulator,
        hoses: a.hoses,
        lubricator: a.lubricator,
        oiler: a.oiler,
        whip: a.whip === null ? null : { boreM: a.whip.bore, lengthM: a.whip.length },
        receiverM3: a.receiver,
        branches,
        altitudeM: a.altitude,
        temperatureK: a.temperature,
        relativeHumidity: a.humidity,
        tools: a.tools ?? 1,
        exponent: a.exponent,
      }
    })
