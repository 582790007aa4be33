import { evaluateRelation, type RelationResult } from '../shared/contracts/relation-request.ts'
import { CATALOGUE, findRelation } from '../shared/core/catalogue.ts'
import { done, type Issue, type Outcome, refused } from '../shared/core/outcome.ts'
import { editDistance, nearestWord } from '../shared/quantities/nearest-word.ts'

/**
 * Always one: a person who misremembers an id is helped even by a far guess. A typing slip first, then the id that shares
 * most words, then the fewest letters changed.
 */
function nearestId(id: string): string | null {
  const ids = CATALOGUE.map((each) => each.id)
  const slip = nearestWord(id, ids)
  if (slip !== null) return slip
  const wanted = id.toLowerCase()
  const words = wanted.split(/[^a-z0-9]+/).filter((word) => word !== '')
  const shared = (known: string) => known.split('-').filter((word) => words.includes(word)).length
  const [best] = ids.sort(
    (a, b) => shared(b) - shared(a) || editDistance(wanted, a) - editDistance(wanted, b),
  )
  return best ?? null
}

/** The refusal of an id that no relation has. */
export function unknownRelation(id: string): Issue {
  const nearest = nearestId(id.slice(0, 64))
  const relation = nearest === null ? undefined : findRelation(nearest)
  return {
    path: '',
    code: 'unknown-relation',
    given: id.slice(0, 64),
    ...(relation === undefined ? {} : { candidates: [{ value: relation.id, means: relation.title }] }),
  }
}

/** The result as it leaves the program: `relation --json` and GET /api/relations/ID give the same document. */
export type RelationAnswer = { readonly schema: 'underlane/relation@1' } & RelationResult

/** Evaluates a relation for `name=value` pairs as typed. */
export function answerRelation(
  id: string,
  pairs: readonly (readonly [name: string, value: string])[],
): Outcome<RelationAnswer> {
  const relation = findRelation(id)
  if (relation === undefined) return refused(unknownRelation(id))
  const names = pairs.map(([name]) => name)
  const twice = names.filter((name, at) => names.indexOf(name) !== at)
  if (twice.length > 0) {
    return refused(
      ...twice.map((name): Issue => ({ path: name, code: 'inputs-conflict', accepted: 'one value' })),
    )
  }
  const found = evaluateRelation(relation, Object.fromEntries(pairs))
  return found.ok ? done({ schema: 'underlane/relation@1', ...found.value }) : found
}

/** What a list of relations says of each. */
export const relationList = () =>
  CATALOGUE.map(({ id, title, formula, sources, inputs, outputs, remarks }) => ({
    id,
    title,
    formula,
    sources,
    inputs,
    outputs,
    ...(remarks === undefined ? {} : { remarks }),
  }))
