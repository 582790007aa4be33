import { signal } from '@preact/signals'
import type { Standing } from '../../../shared/sources/shape.ts'

/** One of the things a figure is made of. */
export type MadeOf = { readonly name: string; readonly value: string; readonly standing?: Standing }

export type WorkingOf = {
  readonly label: string
  readonly value: string
  /** Ids of the relations behind it, the nearest first. */
  readonly relations: readonly string[]
  /** The beginning of what the working is about: 'shot 1', 'line 2'. */
  readonly about?: string
  /** The figure is a quantile or a share of the draws; the working shown is of the middle of the road. */
  readonly isOfDraws?: true
  /** Good day, likely, bad day, each with the quantile it is. */
  readonly days?: readonly MadeOf[]
  /** How the parts make the figure, where no relation says it. */
  readonly rule?: string
  readonly parts?: readonly MadeOf[]
}

/** The one working that is open. */
export const workingShown = signal<WorkingOf | null>(null)
export type LeftWorking = { readonly of: WorkingOf; readonly path: string }
/** The one that was left for the list of workings, and the page it stood on, to come back to. */
export const workingLeft = signal<LeftWorking | null>(null)

export const showWorking = (of: WorkingOf): void => {
  workingLeft.value = null
  workingShown.value = of
}
export const closeWorking = (): void => {
  workingShown.value = null
}
export const leaveWorking = (of: WorkingOf, path: string): void => {
  workingLeft.value = { of, path }
}
