// @vitest-environment happy-dom
import { expect, test } from 'vitest'
import { keptAgo } from '../../web/offline/offline-words.ts'
import { shellPath } from '../../web/offline/shell-path.ts'

const files = ['/sign.svg', '/assets/index-abc.js']

test.each([
  ['/', true, '/'],
  ['/workings', true, '/'],
  ['/crossings/1', true, '/'],
  ['/assets/index-abc.js', false, '/assets/index-abc.js'],
  // Of the version before, for a tab that still shows it.
  ['/assets/old-def.js', false, '/assets/old-def.js'],
  ['/sign.svg', true, '/sign.svg'],
  ['/missing.pdf', true, null],
  ['/workings', false, null],
  ['/sw.js', false, null],
  ['/api', true, null],
  ['/api/crossings', false, null],
  ['/apiary', true, '/'],
])('%s, opened as a page %s, is answered with %s', (path, isNavigation, expected) => {
  expect(shellPath(path, { isNavigation, files })).toBe(expected)
})

test.each([
  [20, 'kept just now'],
  [119, 'kept 1 min ago'],
  [3 * 3600, 'kept 3 h ago'],
  [47 * 3600, 'kept 47 h ago'],
  [49 * 3600, 'kept 2 days ago'],
])('%d s is said as "%s"', (seconds, words) => {
  expect(keptAgo(seconds)).toBe(words)
})
