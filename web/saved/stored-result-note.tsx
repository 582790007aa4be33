import { useMemo } from 'preact/hooks'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import type { KeptCrossing } from '../../shared/contracts/kept-crossing.ts'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { planCrossing } from '../../shared/core/plan/plan-crossing.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import type { JsonObject } from '../state/json.ts'
import { movedFigures } from './key-figures.ts'
import { STORED } from './saved-words.ts'
import type { Saver } from './saver.ts'

function planNow(document: JsonObject): Plan | null {
  const input = parseCrossing(document)
  const plan = input.ok ? planCrossing(input.value) : input
  return plan.ok ? plan.value : null
}

function headline(kept: KeptCrossing, engine: string, now: Plan | null): string {
  if (kept.result === null) return STORED.noResult(engine)
  if (now === null) return STORED.noneNow(engine)
  const hammer = movedFigures(kept.result, now).find(({ name }) => name === 'hammer')
  return hammer === undefined ? STORED.otherwise(engine) : STORED.sentence(engine, hammer.saved, hammer.now)
}

/** What was worked out at the save stays as made; where the engine answers otherwise today, both stand here. */
export function StoredResultNote({ saver }: { readonly saver: Saver }) {
  const kept = saver.kept.value
  const now = useMemo(() => (kept === null ? null : planNow(kept.document)), [kept])
  if (kept === null || kept.engine === null) return null
  if (kept.result === null && now === null) return null
  const { engine } = kept
  const moved = movedFigures(kept.result ?? {}, now ?? {})
  if (moved.length === 0) {
    if (engine === ENGINE_VERSION) return null
    return <p class="fine stored-same">{STORED.same(engine, ENGINE_VERSION)}</p>
  }
  return (
    <section class="panel stored" aria-labelledby="stored-heading">
      <h2 id="stored-heading">{STORED.heading}</h2>
      <p>
        <strong>{headline(kept, engine, now)}</strong> {STORED.kept}
      </p>
      <DataTable
        caption={STORED.caption(engine, ENGINE_VERSION)}
        columns={STORED.columns}
        rows={moved.map(({ name, saved, now: today }) => ({
          key: name,
          cells: [STORED.figures[name], saved, today],
        }))}
      />
      {saver.state.value.state === 'saved' && (
        <div class="actions">
          <button type="button" onClick={() => void saver.save()}>
            {STORED.again}
          </button>
        </div>
      )}
    </section>
  )
}
