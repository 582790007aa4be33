import { signal } from '@preact/signals'

export type WorkingOf = {
  readonly label: string
  readonly value: string
  /** Ids of the relations behind it, the nearest first. */
  readonly relations: readonly string[]
  /** The beginning of what the working is about: 'shot 1', 'line 2'. */
  readonly about?: string
  /** The figure is a quantile or a share of the draws; the working shown is of the middle of the road. */
  readonly isOfDraws?: true
}

/** The one working that is open. */
export const workingShown = signal<WorkingOf | null>(null)
export const showWorking = (of: WorkingOf): void => {
  workingShown.value = of
}
export const closeWorking = (): void => {
  workingShown.value = null
}
