import type { z } from 'zod'
import { attachmentFile } from './attachment.ts'
import { boreLogFile } from './bore-log.ts'
import { compressorFile } from './compressor.ts'
import { crewFile } from './crew.ts'
import { customerFile } from './customer.ts'
import { dayFile } from './day.ts'
import { hoseFile } from './hose.ts'
import { inspectionFile } from './inspection-file.ts'
import { jobFile } from './job.ts'
import { rateBookFile } from './kept-rate-book.ts'
import { partFile } from './part-file.ts'
import { personFile } from './person.ts'
import { quoteFile } from './quote.ts'
import { settingsFile } from './settings.ts'
import { signOffFile } from './sign-off.ts'
import { toolFile } from './tool-file.ts'
import { toolTemplateFile } from './tool-template-file.ts'

/**
 * The documents that are kept as they are given, by the word in their address. Crossings are kept too, but planned first.
 */
export const NOUN_FILES = {
  jobs: jobFile,
  customers: customerFile,
  tools: toolFile,
  compressors: compressorFile,
  hoses: hoseFile,
  crews: crewFile,
  people: personFile,
  'rate-books': rateBookFile,
  quotes: quoteFile,
  days: dayFile,
  'bore-logs': boreLogFile,
  'sign-offs': signOffFile,
  attachments: attachmentFile,
  settings: settingsFile,
  'tool-templates': toolTemplateFile,
  parts: partFile,
  inspections: inspectionFile,
} as const satisfies Readonly<Record<string, z.ZodType>>

export type PlainNoun = keyof typeof NOUN_FILES
export const PLAIN_NOUNS = Object.keys(NOUN_FILES) as readonly PlainNoun[]
