import type { JsonObject } from '../state/json.ts'

/** A day on which one tool is put to one crossing. */
export const plannedDocument = (tool: string, crossing: string, on: string): JsonObject => ({
  name: on,
  on,
  crossings: [crossing],
  tools: [{ crossing, tool }],
})
