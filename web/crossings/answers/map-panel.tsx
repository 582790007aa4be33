import { useEffect, useState } from 'preact/hooks'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { Panel } from '../form/panel.tsx'

type LineMap = typeof import('../../map/line-map.tsx')['LineMap']

/** The line between the pits, where their positions are known; the map is fetched only then. */
export function MapPanel({ input }: { readonly input: CrossingInput }) {
  const [Drawn, setDrawn] = useState<LineMap | null>(null)
  const hasPositions = 'launch' in input.line
  useEffect(() => {
    if (hasPositions) import('../../map/line-map.tsx').then(({ LineMap }) => setDrawn(() => LineMap))
  }, [hasPositions])
  if (!('launch' in input.line)) return null
  const { launch, reception } = input.line
  return (
    <Panel id="map" heading={ANSWERS.map}>
      {Drawn === null ? <div class="line-map-place" /> : <Drawn launch={launch} reception={reception} />}
    </Panel>
  )
}
