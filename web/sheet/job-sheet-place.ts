import { useEffect } from 'preact/hooks'
import type { CrossingModel } from '../state/crossing-model.ts'

/** Fetched once the page stands, not when it is asked for: paper is wanted where there is no signal too. */
export function useJobSheet(model: CrossingModel): void {
  useEffect(() => {
    let leave: (() => void) | null = null
    let isGone = false
    import('./print-job-sheet.tsx').then(({ printsJobSheet }) => {
      if (!isGone) leave = printsJobSheet(model)
    })
    return () => {
      isGone = true
      leave?.()
    }
  }, [model])
}
