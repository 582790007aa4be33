import { mergeDocuments, sameJson } from '../../shared/contracts/merge-documents.ts'
import { isList, isObject, type Json, type JsonObject } from '../state/json.ts'

export type Side = 'mine' | 'theirs'

/** One top-level key on which two versions differ. */
export type Difference = {
  readonly key: string
  /** Both changed it, each in its own way: somebody must choose. Otherwise whose change is taken. */
  readonly kind: 'choose' | 'only-mine' | 'only-theirs'
  readonly mine: Json | undefined
  readonly theirs: Json | undefined
}

/** Two changes of one crossing side by side; without the version both were made from, every difference is a choice. */
export function differencesOf(
  base: JsonObject | null,
  mine: JsonObject,
  theirs: JsonObject,
): readonly Difference[] {
  const { conflicts } = mergeDocuments(base ?? {}, mine, theirs)
  const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])]
  return keys
    .filter((key) => !sameJson(mine[key], theirs[key]))
    .map((key) => {
      const isChoice = base === null || conflicts.includes(key)
      const onlyMine = base !== null && sameJson(base[key], theirs[key])
      const kind = isChoice ? 'choose' : onlyMine ? 'only-mine' : 'only-theirs'
      return { key, kind, mine: mine[key], theirs: theirs[key] }
    })
}

const sideOf = ({ key, kind }: Difference, choices: ReadonlyMap<string, Side>): Side =>
  kind === 'only-theirs' ? 'theirs' : kind === 'only-mine' ? 'mine' : (choices.get(key) ?? 'mine')

/** Both versions in one, in the order of theirs; a key left out by the side taken is left out. */
export function broughtTogether(
  mine: JsonObject,
  theirs: JsonObject,
  differences: readonly Difference[],
  choices: ReadonlyMap<string, Side>,
): JsonObject {
  const keys = [...new Set([...Object.keys(theirs), ...Object.keys(mine)])]
  const entries = keys.flatMap((key): readonly (readonly [string, Json])[] => {
    const difference = differences.find((each) => each.key === key)
    const side = difference === undefined ? 'theirs' : sideOf(difference, choices)
    const value = (side === 'mine' ? mine : theirs)[key]
    return value === undefined ? [] : [[key, value]]
  })
  return Object.fromEntries(entries)
}

/** A value of a crossing file in lines a person can compare: 'launch 42 in'. */
export function linesOf(value: Json | undefined, name = ''): readonly string[] {
  const named = (text: string) => (name === '' ? text : `${name} ${text}`)
  if (value === undefined) return []
  if (isList(value)) {
    if (value.length === 0) return [named('–')]
    return value.flatMap((each, place) => linesOf(each, `${name} ${place + 1}`.trim()))
  }
  if (isObject(value)) {
    const words = (key: string) => key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    const plain = Object.entries(value).filter(([, each]) => !isObject(each) && !isList(each))
    const deep = Object.entries(value).filter(([, each]) => isObject(each) || isList(each))
    const line = plain.map(([key, each]) => `${words(key)} ${String(each)}`).join(', ')
    return [
      ...(line === '' ? [] : [named(line)]),
      ...deep.flatMap(([key, each]) => linesOf(each, named(words(key)))),
    ]
  }
  return [named(String(value))]
}
