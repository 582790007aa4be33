import type { Context } from 'hono'
import type { Language } from '../../shared/text/language.ts'
import { issuesWithText } from '../issues-with-text.ts'
import type { Changed, Stored } from '../store/noun.ts'
import { type AppEnv, errorBody, refuse } from './api-error.ts'
import { languageOf } from './language.ts'

/** One kept document as it is answered: the result as made, reasons with their sentences. */
export function keptAnswer<Document>({ made, ...listed }: Stored<Document>, language: Language) {
  return {
    ...listed,
    inputSha256: made?.inputSha256 ?? null,
    result: made?.result ?? null,
    issues: issuesWithText(made?.issues ?? [], language),
  }
}

export function answerKept<Document>(c: Context<AppEnv>, stored: Stored<Document>, status: 200 | 201) {
  c.header('ETag', `"${stored.version}"`)
  return c.json(keptAnswer(stored, languageOf(c)), status)
}

const NAME_THE_VERSION = { path: 'If-Match', code: 'required', accepted: 'If-Match: "<version>"' } as const

/** A change of what is there must say what it was made from. */
export const versionWanted = (c: Context<AppEnv>) =>
  refuse(c, 428, 'precondition-required', [NAME_THE_VERSION])

/**
 * The answer to a change. What stands in its way comes along as `current`, so that the asker can bring both together and
 * ask again.
 */
export function answerChange<Document>(
  c: Context<AppEnv>,
  changed: Changed<Document>,
  asked: { readonly expectedVersion: number | null; readonly doneStatus: 200 | 201 },
) {
  switch (changed.outcome) {
    case 'done':
      return answerKept(c, changed.stored, asked.doneStatus)
    case 'same':
      return answerKept(c, changed.stored, 200)
    case 'conflict': {
      const { stored } = changed
      const current = keptAnswer(stored, languageOf(c))
      c.header('ETag', `"${stored.version}"`)
      c.header('Cache-Control', 'no-store')
      const mustName = asked.expectedVersion === null && stored.deletedAt === null
      return mustName
        ? c.json({ ...errorBody(c, 'precondition-required', [NAME_THE_VERSION]), current }, 428)
        : c.json({ ...errorBody(c, 'conflict'), current }, 409)
    }
    case 'absent':
      return refuse(c, 404, 'not-found')
    case 'too-late':
      return refuse(c, 410, 'gone')
    case 'key-reused':
      return refuse(c, 422, 'key-reused')
  }
}
