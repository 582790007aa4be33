// Late parts come from disk while other tests run: what is looked for is waited for as long as a test may take.
import { configure } from '@testing-library/preact'
import { fetchIssueWords } from '../../web/fields/issue-words.ts'

configure({ asyncUtilTimeout: 15_000 })
await fetchIssueWords()
// A late part within a late part: here before the last test ends, not after.
await import('../../web/crossings/answers/air-details.tsx')
