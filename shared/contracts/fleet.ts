import { z } from 'zod'
import type { Outcome } from '../core/outcome.ts'
import type { FleetTool } from '../core/plan/which-tool.ts'
import { toolFile } from './tool-file.ts'
import { parseWith } from './zod-issues.ts'

/** Tools on the shelf as the ranking takes them: what a crossing says of its tool, and whether it is out of use. */
const fleet = z.array(toolFile).max(500)

/** A list of tool files, parsed from JSON, or every problem with its path. */
export function parseFleet(document: unknown): Outcome<readonly FleetTool[]> {
  const parsed = parseWith(fleet, document)
  if (!parsed.ok) return parsed
  return {
    ok: true,
    value: parsed.value.map((each) => ({
      name: each.name,
      withdrawn: each.withdrawn ?? null,
      tool: {
        diameterM: each.diameter,
        lengthM: each.length ?? null,
        massKg: each.mass ?? null,
        blowEnergyJ: each.blowEnergy ?? null,
        blowRateHz: each.blowRate ?? null,
        airDemandM3PerS: each.airDemand ?? null,
        ratedGaugePa: each.ratedPressure ?? null,
        head: each.head ?? null,
        reversible: null,
      },
    })),
  }
}
