import { useLate } from '../../late.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import type { Path } from '../../state/document-path.ts'

const load = () => import('./field-guide.tsx')

/** Fetched once the page stands: the plain form does not wait for it. */
export function LateFieldGuide({ model, path }: { readonly model: CrossingModel; readonly path: Path }) {
  const late = useLate(load)
  return late === null ? null : <late.FieldGuide model={model} path={path} />
}
