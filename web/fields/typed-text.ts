import { useEffect, useState } from 'preact/hooks'
import type { CrossingModel } from '../state/crossing-model.ts'
import { textAt } from '../state/document-path.ts'

type Options = {
  /** Whether what stands there is complete: then it is handed on at once, else when the field is left. */
  readonly isComplete: (text: string) => boolean
  readonly commit: (text: string) => void
}

/** Half-typed text is the field's own; the crossing gets it when it is complete, or when the field is left. */
export function useTypedText(model: CrossingModel, path: string, { isComplete, commit }: Options) {
  const [typed, setTyped] = useState<string | null>(null)
  const opened = model.opened.value
  useEffect(() => setTyped(null), [opened])
  const kept = textAt(model.document.value, path)
  return {
    text: typed ?? kept,
    isHalfTyped: typed !== null && typed !== kept,
    onInput: (text: string) => {
      setTyped(text)
      if (isComplete(text)) commit(text)
    },
    onLeave: () => {
      if (typed !== null && typed !== kept) commit(typed)
      setTyped(null)
    },
    take: (text: string) => {
      setTyped(null)
      commit(text)
    },
  }
}
