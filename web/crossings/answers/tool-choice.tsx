import { useMemo, useState } from 'preact/hooks'
import { parseFleet } from '../../../shared/contracts/fleet.ts'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { RankedTool } from '../../../shared/core/plan/ground-answers.ts'
import { type FleetTool, whichTool } from '../../../shared/core/plan/which-tool.ts'
import { reasonsByTools, toolVerdict } from '../../../shared/text/ground-sentences.ts'
import { GROUND_TABLE_WORDS } from '../../../shared/text/ground-table-words.ts'
import { shown, shownChance, shownNumber } from '../../fields/shown.ts'
import { documentsOf } from '../../shop-air/shop-air.ts'
import { say } from '../../state/unit-choice.ts'
import { GROUND_PANEL as W } from '../../words/ground-words.ts'
import { DataTable } from './data-table.tsx'
import { StatusMark } from './status-mark.tsx'

const SHAPES = { none: 'good', check: 'look', hold: 'stop', no: 'stop' } as const

const rowOf = (tool: RankedTool) => ({
  key: tool.name,
  cells: [
    tool.name,
    <span key="verdict">
      <StatusMark shape={SHAPES[tool.verdict]} /> {toolVerdict(tool, say.value)}
    </span>,
    tool.coverRatio === null ? shown(null, 'ratio') : `${shownNumber(tool.coverRatio)} ×`,
    shown(tool.toolGaugePa, 'gaugePressure'),
    shownChance(tool.arrivalProbability),
    shownChance(tool.hitProbability),
    shown(tool.hammerS, 'duration'),
  ],
})

function Ranked({ tools }: { readonly tools: readonly RankedTool[] }) {
  const words = GROUND_TABLE_WORDS[say.value.lang]
  return (
    <>
      <DataTable caption={words.tools} columns={words.columns} rows={tools.map(rowOf)} />
      <ul>
        {reasonsByTools(tools, say.value).map(({ sentence, names }) => (
          <li key={sentence}>
            {names.join(', ')}: {sentence}
          </li>
        ))}
      </ul>
    </>
  )
}

/** A tool file that cannot be read is left out here; the shop's own page says what is wrong with it. */
const readable = (documents: readonly unknown[]): readonly FleetTool[] =>
  documents.flatMap((each) => {
    const parsed = parseFleet([each])
    return parsed.ok ? parsed.value : []
  })

/** The shop's tools, each planned with in this bore; asked for, since each is a plan of its own. */
export function ToolChoice({ input }: { readonly input: CrossingInput }) {
  const [fleet, setFleet] = useState<readonly FleetTool[] | 'asking' | null>(null)
  const tools = useMemo(() => (Array.isArray(fleet) ? whichTool(input, fleet) : null), [input, fleet])
  const ask = async () => {
    setFleet('asking')
    setFleet(readable(await documentsOf('tools')))
  }
  return (
    <section aria-labelledby="tool-choice-heading">
      <h3 id="tool-choice-heading">{W.tools}</h3>
      <button type="button" class="quiet" disabled={fleet === 'asking'} onClick={ask}>
        {W.ask}
      </button>
      <div role="status">
        {fleet === 'asking' && <p class="fine">{W.asking}…</p>}
        {tools?.length === 0 && <p>{W.noTools}</p>}
      </div>
      {tools !== null && tools.length > 0 && <Ranked tools={tools} />}
    </section>
  )
}
