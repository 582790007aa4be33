import { useRef, useState } from 'preact/hooks'
import type { CrossingModel } from '../state/crossing-model.ts'
import { type Path, textAt, valueAt } from '../state/document-path.ts'
import type { Json } from '../state/json.ts'

/** A depth that was dragged: what stood there before, and what was written last. */
type DepthChange = { readonly path: Path; readonly former: Json | undefined; readonly written: string }

/**
 * One drag, or one stay on a handle by keyboard, is one change: Escape takes it back while it goes on, and undo when
 * it is over. What was typed there since is never undone.
 */
export function useDepthChange(model: CrossingModel) {
  const underWay = useRef<{ readonly path: Path; readonly former: Json | undefined } | null>(null)
  const [last, setLast] = useState<DepthChange | null>(null)
  const isLast = last !== null && textAt(model.document.value, last.path) === last.written
  return {
    isUnderWay: () => underWay.current !== null,
    write(path: Path, text: string) {
      underWay.current ??= { path, former: valueAt(model.document.value, path) }
      if (textAt(model.document.value, path) === text) return
      model.set(path, text)
      setLast({ path, former: underWay.current.former, written: text })
    },
    finish() {
      underWay.current = null
    },
    /** Back to where this change began. */
    takeBack() {
      if (underWay.current === null) return
      model.set(underWay.current.path, underWay.current.former)
      underWay.current = null
      setLast(null)
    },
    last: isLast ? last : null,
    undo() {
      if (last === null) return
      model.set(last.path, last.former)
      setLast(null)
    },
  }
}
