import { useLate } from '../../late.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { FORM } from '../../words/form-words.ts'
import { FoldedPanel } from './panel.tsx'

const load = () => import('./start-choices.tsx')

export function StartPanel({ model }: { readonly model: CrossingModel }) {
  const late = useLate(load)
  return (
    <FoldedPanel id="start" heading={FORM.start.heading} inBrief={FORM.start.more}>
      {late !== null && <late.StartChoices model={model} />}
    </FoldedPanel>
  )
}
