import type { Issue } from '../../shared/core/outcome.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import type { Path } from '../state/document-path.ts'

/** Where a field reads and writes, and what it is called. */
export type FieldPlace = {
  readonly model: CrossingModel
  readonly path: Path
  readonly label: string
  readonly hint?: string
}

export const fieldId = (path: Path): string => `field-${path.replaceAll('.', '-')}`

export const issuesAt = (issues: readonly Issue[], path: Path): readonly Issue[] =>
  issues.filter((issue) => issue.path === path)
