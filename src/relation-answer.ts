import { evaluateRelation, parseRelationRequest } from '../shared/contracts/relation-request.ts'
import { CATALOGUE, findRelation } from '../shared/core/catalogue.ts'
import { type Issue, type Outcome, refused } from '../shared/core/outcome.ts'
import { editDistance } from '../shared/quantities/nearest-word.ts'

/** Always one: a person who misremembers an id is helped even by a far guess. */
function nearestId(id: string): string | null {
  const wanted = id.toLowerCase()
  const distance = (known: string) => (known.includes(wanted) ? 0 : editDistance(wanted, known))
  const [best] = CATALOGUE.map((each) => each.id).sort((a, b) => distance(a) - distance(b))
  return best ?? null
}

/** A refusal of an id that no relation has, or null. */
export function unknownRelation(id: string): Issue | null {
  if (findRelation(id) !== undefined) return null
  const nearest = nearestId(id.slice(0, 64))
  const relation = nearest === null ? undefined : findRelation(nearest)
  return {
    path: '',
    code: 'unknown-relation',
    given: id.slice(0, 64),
    ...(relation === undefined ? {} : { candidates: [{ value: relation.id, means: relation.title }] }),
  }
}

/** Evaluates a relation for `name=value` pairs as typed; the answer is the document underlane/relation@1. */
export function answerRelation(id: string, pairs: readonly (readonly [name: string, value: string])[]) {
  const unknown = unknownRelation(id)
  if (unknown !== null) return refused(unknown)
  const names = pairs.map(([name]) => name)
  const twice = names.filter((name, at) => names.indexOf(name) !== at)
  if (twice.length > 0) {
    return refused(
      ...twice.map((name): Issue => ({ path: name, code: 'inputs-conflict', accepted: 'one value' })),
    )
  }
  const request = parseRelationRequest(id, Object.fromEntries(pairs))
  return request.ok ? evaluateRelation(request.value) : request
}

export type RelationAnswer = ReturnType<typeof answerRelation> extends Outcome<infer Value> ? Value : never

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
