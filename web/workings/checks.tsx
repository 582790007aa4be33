import { useState } from 'preact/hooks'
import { type CheckResult, type ChecksRun, runChecks } from '../../shared/contracts/run-checks.ts'
import type { AnyRelation } from '../../shared/core/relation.ts'
import { PUBLISHED } from '../../shared/published/catalogue.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import { WORKINGS } from '../words/workings-words.ts'

/** Digits enough to see a difference in the last one printed. */
const DIGITS = 8
const numberText = (value: number | string | null): string => {
  if (value === null) return WORKINGS.noAnswer
  return typeof value === 'number' ? String(Number(value.toPrecision(DIGITS))) : value
}

/** The printed tables these relations name. */
export const tablesOf = (relations: readonly AnyRelation[]) => {
  const named = new Set(relations.flatMap((each) => each.checks))
  return Object.fromEntries(Object.entries(PUBLISHED).filter(([name]) => named.has(name)))
}

/** A difference has its sign said. */
const signed = (value: number): string =>
  value === 0 ? '0' : `${value < 0 ? '−' : '+'}${Number(Math.abs(value).toPrecision(2))}`

type Run =
  | { readonly state: 'idle' }
  | { readonly state: 'running' }
  | { readonly state: 'ran'; readonly run: ChecksRun }
  | { readonly state: 'failed' }

export function useChecks(relations: readonly AnyRelation[]) {
  const [run, setRun] = useState<Run>({ state: 'idle' })
  const start = async () => {
    setRun({ state: 'running' })
    try {
      setRun({ state: 'ran', run: await runChecks(relations, tablesOf(relations)) })
    } catch (error) {
      // A table that cannot be fetched is a TypeError in every browser.
      if (!(error instanceof TypeError)) throw error
      setRun({ state: 'failed' })
    }
  }
  return { run, start }
}

export function RunSummary({ run }: { readonly run: Run }) {
  return (
    <p class="run-summary" role="status">
      {run.state === 'running' && WORKINGS.running}
      {run.state === 'failed' && WORKINGS.failed}
      {run.state === 'ran' && (
        <>
          <StatusMark shape={run.run.failed === 0 ? 'good' : 'stop'} />{' '}
          {WORKINGS.ran(run.run.passed, run.run.failed)}
        </>
      )}
    </p>
  )
}

function verdictOf(check: CheckResult): string {
  if (!check.pass) return WORKINGS.notMet
  return check.knownWrong ? WORKINGS.knownWrong : WORKINGS.met
}

const rowOf = (check: CheckResult) => ({
  key: `${check.name} ${check.output} ${check.source}`,
  cells: [
    check.name,
    <code key="output">{check.output}</code>,
    `${numberText(check.expected)} ${check.unit}`,
    `${numberText(check.computed)} ${check.unit}`,
    check.deviation === null ? '' : `${signed(check.deviation)} ${check.unit}`,
    check.tolerance === null ? '' : `${numberText(check.tolerance)} ${check.unit}`,
    <span key="verdict" class={`verdict-word verdict-${check.pass ? 'ok' : 'hold'}`}>
      <StatusMark shape={check.pass ? 'good' : 'stop'} />
      {verdictOf(check)}
    </span>,
  ],
})

export function RelationChecks({ relation }: { readonly relation: AnyRelation }) {
  const { run, start } = useChecks([relation])
  if (relation.checks.length === 0) return <p>{WORKINGS.none}</p>
  return (
    <>
      <button type="button" onClick={start} disabled={run.state === 'running'}>
        {WORKINGS.runChecks}
      </button>
      <RunSummary run={run} />
      {run.state === 'ran' && (
        <DataTable caption={WORKINGS.checks} columns={WORKINGS.columns} rows={run.run.checks.map(rowOf)} />
      )}
    </>
  )
}
