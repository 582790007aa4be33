import type { Issue } from '../shared/core/outcome.ts'
import { issueSentence } from '../shared/text/issue-sentences.ts'
import type { Language } from '../shared/text/language.ts'

export type AnsweredIssue = Issue & { readonly text: string }

/** Sentences are added where a person is answered; what is stored or compared keeps to codes. */
export const issuesWithText = (issues: readonly Issue[], language: Language): readonly AnsweredIssue[] =>
  issues.map((issue) => ({ ...issue, text: issueSentence(issue, language) }))
