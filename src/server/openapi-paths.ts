import { PLAIN_NOUNS, type PlainNoun } from '../../shared/contracts/noun-files.ts'
import { NOUNS } from '../store/nouns.ts'
import { accessPaths } from './openapi-access-paths.ts'
import {
  AFTER,
  answer,
  body,
  errors,
  ID,
  IF_MATCH,
  KEY,
  LIMIT,
  LOST_RACE,
  page,
  parameter,
  ref,
} from './openapi-parts.ts'

const BELONGS_TO = parameter('query', 'of', 'those that belong to this id', {
  type: 'string',
  format: 'uuid',
})
const ON_DAY = parameter('query', 'on', 'those of this day', { type: 'string', format: 'date' })
const REMOVED = parameter('query', 'removed', 'those that were removed, instead', {
  type: 'boolean',
  default: false,
})

type NounWords = {
  readonly path: string
  /** In the middle of a sentence. */
  readonly plural: string
  readonly file: string
  /** First part of the names of what is answered. */
  readonly answers: 'crossing' | 'document'
  readonly saving: string
  readonly result: string
}

function nounPaths({ path, plural, file, answers, saving, result }: NounWords) {
  const kept = answer('as it is kept; ETag is its version', ref(`${answers}-kept`))
  const restoring = { parameters: [ID, { ...IF_MATCH, required: true }, KEY] }
  return {
    [`/api/${path}`]: {
      get: {
        summary: `List ${plural}`,
        parameters: [AFTER, LIMIT, BELONGS_TO, ON_DAY, REMOVED],
        responses: { 200: answer('a page of them', ref(`${answers}-page`)), ...errors(400) },
      },
    },
    [`/api/${path}/{id}`]: {
      get: {
        summary: `One of the ${plural}${result}`,
        parameters: [ID],
        responses: { 200: kept, ...errors(404) },
      },
      put: {
        summary: `Save one of the ${plural}: create it under your UUID, or replace the version named in If-Match`,
        description: saving,
        parameters: [ID, IF_MATCH, KEY],
        requestBody: body(ref(file)),
        responses: {
          200: kept,
          201: { ...kept, description: 'created' },
          ...errors(400, 404, 413, 415, 422, 503),
          ...LOST_RACE,
        },
      },
      delete: {
        summary: `Remove one of the ${plural}; it can be restored for 30 days`,
        ...restoring,
        responses: { 200: kept, ...errors(400, 404, 422), ...LOST_RACE },
      },
    },
    [`/api/${path}/{id}/restore`]: {
      post: {
        summary: 'Take a removal back',
        ...restoring,
        responses: { 200: kept, ...errors(400, 404, 410, 422), ...LOST_RACE },
      },
    },
    [`/api/${path}/{id}/history`]: {
      get: {
        summary: 'Every version, oldest first',
        parameters: [ID, AFTER, LIMIT],
        responses: { 200: answer('a page of them', ref(`${answers}-history`)), ...errors(400, 404) },
      },
    },
  }
}

const crossingPaths = nounPaths({
  path: 'crossings',
  plural: 'crossings',
  file: 'crossing-1',
  answers: 'crossing',
  result: ', with its result as made at the last save',
  saving:
    'The body is the crossing file. One that does not parse is refused; one that parses and has no physical answer is kept without a result, with the reasons.',
})

/** A component's name may hold no @. */
export const fileComponent = (noun: PlainNoun): string =>
  NOUNS[noun].format.replace('underlane/', '').replace('@', '-')

const plainPaths = (noun: PlainNoun) =>
  nounPaths({
    path: noun,
    plural: noun.replace('-', ' '),
    file: fileComponent(noun),
    answers: 'document',
    result: '',
    saving: 'Kept as it was sent, once it has been found to be one.',
  })

const BYTES = { content: { '*/*': { schema: { type: 'string', format: 'binary' } } } }

const contentPaths = {
  '/api/attachments/{id}/content': {
    get: {
      summary: 'The bytes of an attachment',
      parameters: [ID],
      responses: { 200: { description: 'as they are kept, as a file to save', ...BYTES }, ...errors(404) },
    },
    put: {
      summary: 'Send the bytes of an attachment, at most 20 MB',
      description:
        'Save the attachment first: it says the media type, the number of bytes and their SHA-256, and only those bytes are taken: a JPEG, PNG or WebP picture, or a PDF. Of a picture only the picture is kept: camera notes, places and comments are taken out, and the attachment then says the SHA-256 of what is kept, in a version of its own. Sent twice they are kept once.',
      parameters: [ID],
      requestBody: { required: true, ...BYTES },
      responses: {
        200: answer('kept: sha256, byteCount, and the version of the attachment that speaks of it', {
          type: 'object',
        }),
        409: answer('the attachment was changed meanwhile: look again', ref('error')),
        ...errors(404, 413, 415, 422),
      },
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
      responses: { 200: answer('the plan', ref('plan-1')), ...errors(400, 413, 415, 422, 503) },
    },
  },
  '/api/release': {
    post: {
      summary: 'What a plan and its sign-offs amount to: hold or check; ready is only said on site',
      requestBody: body({
        type: 'object',
        required: ['crossing', 'now'],
        properties: {
          crossing: ref('crossing-1'),
          signOffs: { type: 'array', items: ref('sign-off-1') },
          now: { type: 'string', description: 'on the clock of the place: 2026-03-02T09:10' },
          bore: { type: 'integer', minimum: 1, description: 'which bore of the crossing; 1' },
        },
      }),
      responses: { 200: answer('point by point', ref('release-1')), ...errors(400, 413, 415, 422, 503) },
    },
  },
  ...crossingPaths,
  ...Object.fromEntries(PLAIN_NOUNS.flatMap((noun) => Object.entries(plainPaths(noun)))),
  ...contentPaths,
  ...accessPaths,
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
}
