import { type Signal, signal } from '@preact/signals'

type Sentences = typeof import('../../shared/text/issue-sentences.ts')

const known: Signal<Sentences | null> = signal(null)

/** Fetched once the page stands: a first visit has nothing wrong in it. */
export async function fetchIssueWords(): Promise<void> {
  known.value ??= await import('../../shared/text/issue-sentences.ts')
}

/** The sentences of what is wrong; null for the moment it takes to fetch them, and asked again by itself after it. */
export function issueWords(): Sentences | null {
  if (known.value === null) void fetchIssueWords()
  return known.value
}
