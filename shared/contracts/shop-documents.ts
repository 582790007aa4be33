import type { Inspection, ToolTemplate } from '../core/shop/template.ts'
import { inspectionFile } from './inspection-file.ts'
import { toolTemplateFile } from './tool-template-file.ts'

/** Documents of the shop as the engine takes them; null for what is none, such as one of a later version. */

export function templateOf(document: unknown): ToolTemplate | null {
  const read = toolTemplateFile.safeParse(document)
  if (!read.success) return null
  const { name, parts, stripEvery } = read.data
  return {
    name,
    stripEveryS: stripEvery ?? null,
    parts: parts.map((part) => ({
      key: part.key,
      name: part.name ?? null,
      group: part.group,
      driver: part.driver,
      torque: part.torque ?? null,
      leadDays: part.leadDays ?? null,
      measures: part.measures.map((each) => ({
        key: each.key,
        measure: each.measure,
        nominalM: each.nominal ?? null,
        limitM: each.limit ?? null,
        errorM: each.error ?? null,
      })),
    })),
  }
}

export function sheetOf(id: string, document: unknown): Inspection | null {
  const read = inspectionFile.safeParse(document)
  if (!read.success) return null
  const { tool, on, by, readings, tiltBefore, tiltAfter, stripped, replaced } = read.data
  return {
    id,
    tool,
    on,
    by,
    readings: (readings ?? []).map(({ part, key, value, grade }) => ({
      part,
      key,
      valueM: value ?? null,
      grade: grade ?? null,
    })),
    tiltBefore: tiltBefore ?? null,
    tiltAfter: tiltAfter ?? null,
    stripped: stripped ?? false,
    replaced: replaced ?? [],
  }
}
