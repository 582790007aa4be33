type Schema = Readonly<Record<string, unknown>>
const ref = (name: string): Schema => ({ $ref: `#/components/schemas/${name}` })
const json = (schema: Schema) => ({ 'application/json': { schema } })
const page = (items: Schema): Schema => ({
  type: 'object',
  required: ['items', 'next'],
  properties: { items: { type: 'array', items }, next: { type: ['string', 'null'] } },
})

const parameter = (
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
const ID = parameter('path', 'id', 'UUID of the crossing', { type: 'string', format: 'uuid' })
const LIMIT = parameter('query', 'limit', 'at most so many', {
  type: 'integer',
  minimum: 1,
  maximum: 500,
  default: 100,
})
const AFTER = parameter('query', 'after', 'the `next` of the page before', { type: 'string' })
const IF_MATCH = parameter(
  'header',
  'If-Match',
  'the version the change was made from, as ETag gave it: "3"',
  {
    type: 'string',
  },
)
const KEY = parameter(
  'header',
  'Idempotency-Key',
  'the same key with the same change is answered again, not done again',
  { type: 'string', maxLength: 200 },
)

const answer = (description: string, schema: Schema) => ({ description, content: json(schema) })
const KEPT = answer('the crossing as it is kept; ETag is its version', ref('crossing-kept'))
const ERRORS: Readonly<Record<number, string>> = {
  400: 'the address, a header or the JSON cannot be read',
  404: 'there is none',
  410: 'removed too long ago to be restored',
  413: 'more than 1 MB',
  415: 'not application/json',
  422: 'understood, and refused: every problem with its place; or a key used before for another change',
}
const CURRENT: Readonly<Record<number, string>> = {
  409: 'somebody was faster: `current` is what is there now',
  428: 'name the version in If-Match; `current` is what is there now, where a body was sent',
}
const errors = (...codes: readonly (keyof typeof ERRORS)[]) =>
  Object.fromEntries(codes.map((code) => [code, answer(ERRORS[code] ?? '', ref('error'))]))
const LOST_RACE = Object.fromEntries(
  Object.entries(CURRENT).map(([code, description]) => [
    code,
    answer(description, code === '409' ? ref('conflict') : { anyOf: [ref('conflict'), ref('error')] }),
  ]),
)
const body = (schema: Schema) => ({ required: true, content: json(schema) })

const crossingPaths = {
  '/api/crossings': {
    get: {
      summary: 'List crossings',
      parameters: [
        AFTER,
        LIMIT,
        parameter('query', 'removed', 'those that were removed, instead', {
          type: 'boolean',
          default: false,
        }),
      ],
      responses: { 200: answer('a page of them', ref('crossing-page')), ...errors(400) },
    },
  },
  '/api/crossings/{id}': {
    get: {
      summary: 'One crossing with its result as made at the last save',
      parameters: [ID],
      responses: { 200: KEPT, ...errors(404) },
    },
    put: {
      summary: 'Save a crossing: create it under your UUID, or replace the version named in If-Match',
      description:
        'The body is the crossing file. One that does not parse is refused; one that parses and has no physical answer is kept without a result, with the reasons.',
      parameters: [ID, IF_MATCH, KEY],
      requestBody: body(ref('crossing-1')),
      responses: {
        200: KEPT,
        201: { ...KEPT, description: 'created' },
        ...errors(400, 404, 413, 415, 422),
        ...LOST_RACE,
      },
    },
    delete: {
      summary: 'Remove a crossing; it can be restored for 30 days',
      parameters: [ID, { ...IF_MATCH, required: true }, KEY],
      responses: { 200: KEPT, ...errors(400, 404, 422), ...LOST_RACE },
    },
  },
  '/api/crossings/{id}/restore': {
    post: {
      summary: 'Take a removal back',
      parameters: [ID, { ...IF_MATCH, required: true }, KEY],
      responses: { 200: KEPT, ...errors(400, 404, 410, 422), ...LOST_RACE },
    },
  },
  '/api/crossings/{id}/history': {
    get: {
      summary: 'Every version, oldest first',
      parameters: [ID, AFTER, LIMIT],
      responses: { 200: answer('a page of them', ref('crossing-history')), ...errors(400, 404) },
    },
  },
}

/** What can be asked, in the order it is read. */
export const OPENAPI_PATHS = {
  '/api/health': {
    get: {
      summary: 'Whether the server and its store are well',
      responses: { 200: answer('well', { type: 'object' }) },
    },
  },
  '/api/plans': {
    post: {
      summary: 'Plan a crossing without keeping it',
      requestBody: body(ref('crossing-1')),
      responses: { 200: answer('the plan', ref('plan-1')), ...errors(400, 413, 415, 422) },
    },
  },
  ...crossingPaths,
  '/api/relations': {
    get: { summary: 'Every formula', responses: { 200: answer('all of them', page({ type: 'object' })) } },
  },
  '/api/relations/{id}': {
    get: {
      summary: 'Evaluate a formula; its inputs are name=value in the query, with units',
      parameters: [parameter('path', 'id', 'of the formula', { type: 'string' })],
      responses: { 200: answer('outputs in SI', ref('relation-1')), ...errors(404, 422) },
    },
  },
  '/api/schemas': {
    get: {
      summary: 'Names of the JSON Schemas',
      responses: { 200: answer('all of them', page({ type: 'string' })) },
    },
  },
  '/api/schemas/{name}': {
    get: {
      summary: 'One JSON Schema',
      parameters: [parameter('path', 'name', 'such as crossing@1', { type: 'string' })],
      responses: { 200: answer('the schema', { type: 'object' }), ...errors(404) },
    },
  },
} as const
