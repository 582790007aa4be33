import { z } from 'zod'
import { crossingSchema } from '../shared/contracts/crossing.ts'
import { checksResult, relationResult } from '../shared/contracts/formula-results.ts'
import { NOUN_FILES, PLAIN_NOUNS } from '../shared/contracts/noun-files.ts'
import { planResult } from '../shared/contracts/plan-result.ts'
import { refusal } from '../shared/contracts/refusal.ts'
import { releaseAnswer } from '../shared/contracts/release-answer.ts'
import { NOUNS } from './store/nouns.ts'

const SCHEMAS: Readonly<Record<string, z.ZodType>> = {
  'crossing@1': crossingSchema('refuse'),
  'plan@1': planResult,
  'relation@1': relationResult,
  'checks@1': checksResult,
  ...Object.fromEntries(
    PLAIN_NOUNS.map((noun) => [NOUNS[noun].format.replace('underlane/', ''), NOUN_FILES[noun]]),
  ),
  'release@1': releaseAnswer,
  'refusal@1': refusal,
}

export const SCHEMA_NAMES: readonly string[] = Object.keys(SCHEMAS)

/** The JSON Schema of what is sent or answered, by `crossing`, `crossing@1` or `underlane/crossing@1`; null for another name. */
export function jsonSchema(name: string): unknown {
  const short = name.replace(/^underlane\//, '')
  const full =
    SCHEMA_NAMES.find((each) => each === short) ?? SCHEMA_NAMES.find((each) => each.split('@')[0] === short)
  const schema = full === undefined ? undefined : SCHEMAS[full]
  if (full === undefined || schema === undefined) return null
  // As written in a file, before units are read; limits that JSON Schema cannot say are left out.
  return { $id: `underlane/${full}`, ...z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) }
}
