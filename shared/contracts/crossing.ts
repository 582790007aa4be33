import { z } from 'zod'
import type { Issue, Outcome } from '../core/outcome.ts'
import { type CrossingInput, PULL_METHODS } from '../core/plan/crossing-input.ts'
import { air } from './air-line.ts'
import { depth, end, line, over, PIT, pipe, shots, spread, surface, tool } from './crossing-parts.ts'
import { emergency } from './emergency.ts'
import { groundStretch } from './ground-stretch.ts'
import { learned, pastBore } from './learned.ts'
import { locate } from './locate.ts'
import { aim, observation } from './observations.ts'
import { overhead, privateLines } from './private-lines.ts'
import { type BareNumbers, choice, orNull, quantity, shortText } from './quantity-field.ts'
import { rates } from './rate-book.ts'
import { utilitiesAsked, utility } from './utilities.ts'
import { parseWith } from './zod-issues.ts'

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
      shots: shots(bare).optional(),
      ends: z.strictObject({ launch: end(bare).optional(), reception: end(bare).optional() }).optional(),
      over: over(bare).optional(),
      surface: surface(bare).optional(),
      ground: z.array(groundStretch(bare)).min(1).max(50),
      pipes: z.array(pipe(bare)).min(1).max(12),
      pull: orNull(choice(PULL_METHODS)),
      tool: tool(bare),
      air: air(bare),
      utilities: z.array(utility(bare)).max(200).optional(),
      utilitiesAsked: utilitiesAsked.optional(),
      locate: locate.optional(),
      observations: z.array(observation(bare)).max(100).optional(),
      aim: aim(bare).optional(),
      privateLines: privateLines.optional(),
      overhead: overhead(bare).optional(),
      emergency: emergency.optional(),
      learned: learned.optional(),
      pastBores: z.array(pastBore(bare)).max(100).optional(),
      rates: rates.optional(),
      spread: spread.optional(),
    })
    .transform(
      (c): CrossingInput => ({
        name: c.name,
        line: c.line,
        depth: c.depth,
        grade: c.grade,
        shots: c.shots ?? [],
        ends: { launch: c.ends?.launch ?? PIT, reception: c.ends?.reception ?? PIT },
        over: c.over ?? [],
        surface: c.surface ?? [],
        ground: c.ground,
        pipes: c.pipes,
        pull: c.pull,
        tool: c.tool,
        air: c.air,
        utilities: c.utilities ?? null,
        utilitiesAsked: c.utilitiesAsked ?? null,
        locate: c.locate ?? null,
        observations: c.observations ?? [],
        aim: c.aim ?? { method: null, errorM: null, layoutM: null },
        privateLines: c.privateLines ?? null,
        overhead: c.overhead ?? [],
        emergency: c.emergency ?? null,
        learned: c.learned ?? [],
        pastBores: c.pastBores ?? [],
        rates: c.rates ?? null,
        spread: c.spread ?? { seed: 1, draws: 1024 },
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
