// Late parts come from disk while other tests run: what is looked for is waited for as long as a test may take.
import { configure } from '@testing-library/preact'
import { fetchIssueWords } from '../../web/fields/issue-words.ts'

configure({ asyncUtilTimeout: 15_000 })
await fetchIssueWords()
// They are fetched here once, so that none is still on its way when the last test of a file has ended.
await Promise.all([
  import('../../web/crossings/answers/air-details.tsx'),
  import('../../web/crossings/answers/compared-table.tsx'),
  import('../../web/crossings/answers/further-answers.tsx'),
  import('../../web/crossings/still-needed.tsx'),
  import('../../web/crossings/form/air-more.tsx'),
  import('../../web/crossings/form/field-guide.tsx'),
  import('../../web/crossings/form/lower-panels.tsx'),
  import('../../web/crossings/form/start-choices.tsx'),
  import('../../web/locate/place-rules.tsx'),
  import('../../web/profile/air-pictures.tsx'),
  import('../../web/profile/ladder-drawing.tsx'),
  import('../../web/profile/profile.tsx'),
])
