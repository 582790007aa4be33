import { z } from 'zod'
import type { PlainNoun } from '../../shared/contracts/noun-files.ts'
import type { Noun } from './noun.ts'

/**
 * A document as it was given. Only the name is looked at here: it is parsed in full where it comes in, so that one
 * stored by an older version still opens.
 */
const namedDocument = z.looseObject({ name: z.string() })
export type NamedDocument = z.infer<typeof namedDocument>

/** The very object that was given: zod would put the keys it knows first. */
function readNamed(given: unknown): NamedDocument {
  namedDocument.parse(given)
  return given as NamedDocument
}

type Keys = { readonly belongsTo?: string; readonly onDay?: string }

const textAt = (document: NamedDocument, key: string | undefined): string | null => {
  const value = key === undefined ? undefined : document[key]
  return typeof value === 'string' ? value.toLowerCase() : null
}

/** A noun whose documents have a name; `keys` says under which of theirs stands what it is listed by. */
const noun = (table: string, format: string, keys: Keys = {}): Noun<NamedDocument> => ({
  table,
  format,
  nameOf: (document) => document.name,
  keysOf: (document) => ({
    belongsTo: textAt(document, keys.belongsTo),
    onDay: textAt(document, keys.onDay),
  }),
  read: readNamed,
  upgrades: {},
})

export type NounPath = PlainNoun | 'crossings'

/** Every noun, by the word in its address. */
export const NOUNS: Readonly<Record<NounPath, Noun<NamedDocument>>> = {
  crossings: noun('crossing', 'underlane/crossing@1'),
  jobs: noun('job', 'underlane/job@1', { belongsTo: 'customer', onDay: 'on' }),
  customers: noun('customer', 'underlane/customer@1'),
  tools: noun('tool', 'underlane/tool@1'),
  compressors: noun('compressor', 'underlane/compressor@1'),
  hoses: noun('hose', 'underlane/hose@1'),
  crews: noun('crew', 'underlane/crew@1'),
  people: noun('person', 'underlane/person@1', { belongsTo: 'crew' }),
  'rate-books': noun('rate_book', 'underlane/rate-book@1'),
  quotes: noun('quote', 'underlane/quote@1', { belongsTo: 'job', onDay: 'on' }),
  days: noun('day', 'underlane/day@1', { belongsTo: 'crew', onDay: 'on' }),
  'bore-logs': noun('bore_log', 'underlane/bore-log@1', { belongsTo: 'crossing', onDay: 'on' }),
  'sign-offs': noun('sign_off', 'underlane/sign-off@1', { belongsTo: 'crossing', onDay: 'on' }),
  attachments: noun('attachment', 'underlane/attachment@1', { belongsTo: 'of', onDay: 'on' }),
  settings: noun('settings', 'underlane/settings@1'),
  'tool-templates': noun('tool_template', 'underlane/tool-template@1'),
  parts: noun('part', 'underlane/part@1', { belongsTo: 'tool' }),
  inspections: noun('inspection', 'underlane/inspection@1', { belongsTo: 'tool', onDay: 'on' }),
}

export const NOUN_PATHS = Object.keys(NOUNS) as readonly NounPath[]
