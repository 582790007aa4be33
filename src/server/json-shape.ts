import type { Issue } from '../../shared/core/outcome.ts'

/** Keys that name what every object inherits: no document of ours has them, and code that copies may trip over them. */
const INHERITED = ['__proto__', 'constructor', 'prototype']

/** The deepest file of ours has five; far deeper ones only try the patience of whatever walks them. */
const MOST_LEVELS = 32
const MOST_ISSUES = 50
const LONGEST_PATH = 200

type Place = { readonly value: unknown; readonly path: string; readonly level: number }

/** What no body may hold, whatever it is about. Walked without recursion, for nobody knows yet how deep it is. */
export function shapeProblems(body: unknown): readonly Issue[] {
  const issues: Issue[] = []
  const waiting: Place[] = [{ value: body, path: '', level: 0 }]
  for (let at = waiting.pop(); at !== undefined && issues.length < MOST_ISSUES; at = waiting.pop()) {
    const { value, path, level } = at
    if (value === null || typeof value !== 'object') continue
    if (level >= MOST_LEVELS) {
      issues.push({ path, code: 'wrong-type', accepted: `at most ${MOST_LEVELS} levels` })
      continue
    }
    for (const [key, inner] of Object.entries(value)) {
      const place = (path === '' ? key : `${path}.${key}`).slice(0, LONGEST_PATH)
      if (INHERITED.includes(key)) issues.push({ path: place, code: 'unknown-key', given: key })
      else waiting.push({ value: inner, path: place, level: level + 1 })
    }
  }
  return issues.slice(0, MOST_ISSUES)
}
