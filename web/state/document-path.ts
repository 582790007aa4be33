import { isList, isObject, type Json, type JsonObject } from './json.ts'

/** Dotted, list places as numbers, as refusals name them: 'air.hoses.0.bore'. */
export type Path = string

const steps = (path: Path): readonly string[] => path.split('.')

/** Objects that mean something by being there at all: emptied, they go. A list place stands as *. */
const GONE_WHEN_EMPTY: readonly string[] = [
  'aim',
  'ends.launch',
  'ends.reception',
  'ends',
  'locate.ticket',
  'locate.rulesRead',
  'locate',
  'utilitiesAsked',
  'utilities.*.exposed',
  'utilities.*.quality',
  'privateLines.answers',
  'privateLines',
  'emergency',
  'air.oiler',
  'air.separator',
  'air.whip',
  'air.branches.*.tool',
  'spread',
]

/** The objects a place lies in, innermost first. */
const around = (path: Path): readonly Path[] =>
  steps(path)
    .map((_step, count) => steps(path).slice(0, count).join('.'))
    .reverse()

export function valueAt(document: JsonObject, path: Path): Json | undefined {
  let at: Json | undefined = document
  for (const step of steps(path)) {
    if (isList(at)) at = at[Number(step)]
    else if (isObject(at)) at = at[step]
    else return undefined
  }
  return at
}

/** What a field shows for the value there. */
export function textAt(document: JsonObject, path: Path): string {
  const value = valueAt(document, path)
  if (value === undefined || value === null) return ''
  return typeof value === 'object' ? JSON.stringify(value) : String(value)
}

export const listAt = (document: JsonObject, path: Path): readonly Json[] => {
  const value = valueAt(document, path)
  return isList(value) ? value : []
}

function withStep(
  parent: Json | undefined,
  rest: readonly string[],
  value: Json | undefined,
): Json | undefined {
  const [step, ...further] = rest
  if (step === undefined) return value
  const isPlace = /^\d+$/.test(step)
  if (isList(parent) || (parent === undefined && isPlace)) {
    const list = isList(parent) ? [...parent] : []
    const inner = withStep(list[Number(step)], further, value)
    // Places of a list mean something (longitude, then latitude): one emptied stays, as an empty text.
    list[Number(step)] = inner ?? ''
    return Array.from(list, (each) => each ?? '')
  }
  const { [step]: former, ...others } = isObject(parent) ? parent : {}
  const inner = withStep(former, further, value)
  if (inner === undefined) return others
  // A key that was there keeps its place, so that a file saved again differs only where it was changed.
  return isObject(parent) && step in parent ? { ...parent, [step]: inner } : { ...others, [step]: inner }
}

/** The document with one value changed; undefined takes it out. */
export function withValue(document: JsonObject, path: Path, value: Json | undefined): JsonObject {
  const changed = withStep(document, steps(path), value)
  let next = isObject(changed) ? changed : {}
  if (value !== undefined) return next
  for (const parent of around(path)) {
    const inner = valueAt(next, parent)
    const isMarker = GONE_WHEN_EMPTY.includes(parent.replace(/\.\d+(?=\.|$)/g, '.*'))
    if (isMarker && isObject(inner) && Object.keys(inner).length === 0) {
      const without = withStep(next, steps(parent), undefined)
      next = isObject(without) ? without : {}
    }
  }
  return next
}
