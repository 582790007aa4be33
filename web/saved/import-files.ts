import { parseCrossing } from '../../shared/contracts/crossing.ts'
import { issueSentence } from '../../shared/text/issue-sentences.ts'
import { isList, isObject, type Json, type JsonObject } from '../state/json.ts'
import { language } from '../state/language-choice.ts'
import { placeWords } from '../words/place-words.ts'
import { FILES } from './saved-words.ts'

/** One crossing found in a file. */
export type FoundCrossing = { readonly from: string; readonly document: JsonObject }

/** What cannot be brought in, and why; `document` when it may be opened and mended. */
export type BadFile = {
  readonly from: string
  readonly sentence: string
  readonly document: JsonObject | null
}

export type ReadFiles = { readonly found: readonly FoundCrossing[]; readonly bad: readonly BadFile[] }

const CROSSING_SCHEMA = 'underlane/crossing@1'
/** A crossing file has a few kilobytes: this is a thousand of them. */
const MOST_BYTES = 16 * 1024 * 1024
const MOST_CROSSINGS = 1000

/** undefined for what is not JSON. */
function parsed(text: string): Json | undefined {
  try {
    return JSON.parse(text)
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}

/** One document, a list of them, or one a line. */
function documentsIn(text: string): readonly Json[] | null {
  const whole = parsed(text)
  if (whole !== undefined) return isList(whole) ? whole : [whole]
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  const each = lines.map(parsed)
  const isLines = lines.length > 1 && each.every((line) => line !== undefined)
  return isLines ? each.flatMap((line) => (line === undefined ? [] : [line])) : null
}

/** Why a document is no crossing file at all; null when it is one, be it unfinished. */
function notOurs(document: Json): string | null {
  if (!isObject(document)) return FILES.notObject
  const { schema } = document
  return schema === undefined || schema === CROSSING_SCHEMA
    ? null
    : FILES.otherSchema(String(typeof schema === 'object' ? JSON.stringify(schema) : schema).slice(0, 64))
}

function fileProblem(file: { readonly size: number }): string | null {
  if (file.size === 0) return FILES.empty
  return file.size > MOST_BYTES ? FILES.tooLarge : null
}

/** What a refused crossing lacks, as one sentence. */
function refusalSentence(document: JsonObject): string | null {
  const read = parseCrossing(document)
  if (read.ok) return null
  const [first] = read.issues
  if (first === undefined) return FILES.notObject
  const where = first.path === '' ? '' : `${placeWords(first.path)}: `
  const more = read.issues.length > 1 ? ` (${FILES.moreIssues(read.issues.length - 1)})` : ''
  return `${where}${issueSentence(first, language.value)}${more}`
}

async function readOne(file: File): Promise<ReadFiles> {
  const bad = (sentence: string) => ({ found: [], bad: [{ from: file.name, sentence, document: null }] })
  const problem = fileProblem(file)
  if (problem !== null) return bad(problem)
  const documents = documentsIn((await file.text()).replace(/^\uFEFF/, ''))
  if (documents === null) return bad(FILES.notJson)
  if (documents.length === 0) return bad(FILES.notObject)
  if (documents.length > MOST_CROSSINGS) return bad(FILES.tooMany(MOST_CROSSINGS))
  const read: { found: FoundCrossing[]; bad: BadFile[] } = { found: [], bad: [] }
  documents.forEach((document, place) => {
    const from = documents.length === 1 ? file.name : FILES.among(file.name, place + 1)
    const sentence = notOurs(document)
    if (sentence !== null || !isObject(document)) {
      read.bad.push({ from, sentence: sentence ?? FILES.notObject, document: null })
    } else read.found.push({ from, document })
  })
  return read
}

/**
 * Crossings of the files given. A single one is handed on even when it cannot be planned yet, for it is opened and can be
 * mended there; of many, those that would be refused are named with their sentence.
 */
export async function readFiles(files: readonly File[]): Promise<ReadFiles> {
  const each = await Promise.all(files.map(readOne))
  const found = each.flatMap((file) => file.found)
  const bad = each.flatMap((file) => file.bad)
  if (found.length + bad.length <= 1) return { found, bad }
  const judged = found.map((one) => ({ ...one, sentence: refusalSentence(one.document) }))
  return {
    found: judged.filter(({ sentence }) => sentence === null),
    bad: [
      ...bad,
      ...judged.flatMap(({ from, document, sentence }) =>
        sentence === null ? [] : [{ from, document, sentence }],
      ),
    ],
  }
}
