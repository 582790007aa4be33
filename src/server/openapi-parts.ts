/** What the descriptions of all routes are made of. */

export type Schema = Readonly<Record<string, unknown>>
export const ref = (name: string): Schema => ({ $ref: `#/components/schemas/${name}` })
export const json = (schema: Schema) => ({ 'application/json': { schema } })
export const page = (items: Schema): Schema => ({
  type: 'object',
  required: ['items', 'next'],
  properties: { items: { type: 'array', items }, next: { type: ['string', 'null'] } },
})

export const parameter = (
  where: 'path' | 'query' | 'header',
  name: string,
  description: string,
  schema: Schema,
) => ({
  name,
  in: where,
  required: where === 'path',
  description,
  schema,
})
export const ID = parameter('path', 'id', 'UUID, made by whoever creates it', {
  type: 'string',
  format: 'uuid',
})
export const LIMIT = parameter('query', 'limit', 'at most so many', {
  type: 'integer',
  minimum: 1,
  maximum: 500,
  default: 100,
})
export const AFTER = parameter('query', 'after', 'the `next` of the page before', { type: 'string' })
export const IF_MATCH = parameter(
  'header',
  'If-Match',
  'the version the change was made from, as ETag gave it: "3"',
  {
    type: 'string',
  },
)
export const KEY = parameter(
  'header',
  'Idempotency-Key',
  'the same key with the same change is answered again, not done again',
  { type: 'string', maxLength: 200 },
)

export const answer = (description: string, schema: Schema) => ({ description, content: json(schema) })
const ERRORS: Readonly<Record<number, string>> = {
  400: 'the address, a header or the JSON cannot be read',
  401: 'not signed in, or the wrong password or code',
  403: 'signed in, and not allowed to',
  404: 'there is none',
  409: 'it is not so any more, or cannot be so',
  410: 'removed too long ago to be restored',
  413: 'more than 1 MB, or 20 MB of an attachment',
  415: 'not application/json, or not the media type the attachment says',
  429: 'too many tries: wait as long as Retry-After says',
  422: 'understood, and refused: every problem with its place; or a key used before for another change',
  503: 'too much to plan, or too many plans at once: ask again later, or for less',
}
const CURRENT: Readonly<Record<number, string>> = {
  409: 'somebody was faster: `current` is what is there now',
  428: 'name the version in If-Match; `current` is what is there now, where a body was sent',
}
export const errors = (...codes: readonly (keyof typeof ERRORS)[]) =>
  Object.fromEntries(codes.map((code) => [code, answer(ERRORS[code] ?? '', ref('error'))]))
export const LOST_RACE = Object.fromEntries(
  Object.entries(CURRENT).map(([code, description]) => [
    code,
    answer(description, code === '409' ? ref('conflict') : { anyOf: [ref('conflict'), ref('error')] }),
  ]),
)
export const body = (schema: Schema) => ({ required: true, content: json(schema) })
