import { isSized, type Measure, type PartGroup, type WearDriver } from '../../shared/core/shop/template.ts'
import type { JsonObject } from '../state/json.ts'
import { sizeWords } from './printed-sheet.tsx'
import type { ShopTool } from './shop-facts.ts'

/** A list as it is edited: sizes as they are typed, an empty text where nothing is said. */
export type EditedMeasure = {
  readonly key: string
  readonly measure: Measure
  readonly nominal: string
  readonly limit: string
  readonly error: string
}
export type EditedPart = {
  readonly key: string
  readonly name: string
  readonly group: PartGroup
  readonly driver: WearDriver
  readonly torque: string
  readonly leadDays: string
  readonly measures: readonly EditedMeasure[]
}
export type EditedTemplate = {
  readonly name: string
  readonly stripEvery: string
  readonly parts: readonly EditedPart[]
}

const textAt = (value: unknown, key: string): string => {
  if (value === null || typeof value !== 'object') return ''
  const found: unknown = Reflect.get(value, key)
  return typeof found === 'string' || typeof found === 'number' ? String(found) : ''
}
const listAt = (value: unknown, key: string): readonly unknown[] => {
  const found: unknown = value !== null && typeof value === 'object' ? Reflect.get(value, key) : undefined
  return Array.isArray(found) ? found : []
}

/** What was typed stays as it was typed; only where nothing was, what is known is written out. */
export function editedOf({ file, template, templateEntry }: ShopTool): EditedTemplate {
  const parts = listAt(templateEntry?.document, 'parts')
  return {
    name: templateEntry === null ? file.name : template.name,
    stripEvery: textAt(templateEntry?.document, 'stripEvery'),
    parts: template.parts.map((part) => {
      const typed = parts.find((each) => textAt(each, 'key') === part.key)
      return {
        key: part.key,
        name: part.name ?? '',
        group: part.group,
        driver: part.driver,
        torque: part.torque ?? '',
        leadDays: part.leadDays === null ? '' : String(part.leadDays),
        measures: part.measures.map((spec) => {
          const was = listAt(typed, 'measures').find((each) => textAt(each, 'key') === spec.key)
          const size = (key: string, valueM: number | null) => textAt(was, key) || sizeWords(valueM)
          return {
            key: spec.key,
            measure: spec.measure,
            nominal: size('nominal', spec.nominalM),
            limit: size('limit', spec.limitM),
            error: size('error', spec.errorM),
          }
        }),
      }
    }),
  }
}

/** The first key of its kind that is not taken; a key that was in use keeps its history. */
export function freeKey(stem: string, taken: readonly string[]): string {
  let number = 1
  while (taken.includes(`${stem}-${number}`)) number++
  return `${stem}-${number}`
}

const given = (key: string, text: string): JsonObject => (text.trim() === '' ? {} : { [key]: text.trim() })

/** The label names hours: a bare number is of those. */
const hours = (text: string): string => (/^[\d.]+$/.test(text.trim()) ? `${text.trim()} h` : text)

/** As it is kept; a lead time that is no number is sent as it is, for the server to refuse by name. */
export function templateDocument({ name, stripEvery, parts }: EditedTemplate): JsonObject {
  return {
    name: name.trim(),
    ...given('stripEvery', hours(stripEvery)),
    parts: parts.map((part) => ({
      key: part.key,
      ...given('name', part.name),
      group: part.group,
      driver: part.driver,
      ...given('torque', part.torque),
      ...(part.leadDays.trim() === '' ? {} : { leadDays: Number(part.leadDays) }),
      measures: part.measures.map(({ key, measure, nominal, limit, error }) => ({
        key,
        measure,
        ...(isSized(measure)
          ? { ...given('nominal', nominal), ...given('limit', limit), ...given('error', error) }
          : {}),
      })),
    })),
  }
}
