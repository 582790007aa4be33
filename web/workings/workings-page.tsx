import { useEffect, useState } from 'preact/hooks'
import { CATALOGUE } from '../../shared/core/catalogue.ts'
import type { AnyRelation } from '../../shared/core/relation.ts'
import { relationFormula, relationRemarks, relationTitle } from '../../shared/text/relation-words.ts'
import { showWorking, workingLeft } from '../crossings/answers/working-shown.ts'
import { say } from '../state/unit-choice.ts'
import { WORKINGS } from '../words/workings-words.ts'
import { RelationChecks, RunSummary, useChecks } from './checks.tsx'
import { RelationForm } from './relation-form.tsx'
import { SourceList } from './source-list.tsx'

/** To where the formula was opened from: the figure with its working, or the crossing. */
function BackToFigure() {
  const left = workingLeft.value
  if (left === null) return <a href="/">{WORKINGS.back}</a>
  return (
    <a href={left.path} onClick={() => showWorking(left.of)}>
      {WORKINGS.backTo(left.of.label)}
    </a>
  )
}

function RelationCard({ relation, isAsked }: { readonly relation: AnyRelation; readonly isAsked: boolean }) {
  const [isOpen, setOpen] = useState(isAsked)
  return (
    <details
      id={relation.id}
      class="relation"
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <span>{relationTitle(relation, say.value.lang)}</span> <code>{relation.id}</code>
      </summary>
      {isOpen && (
        <>
          {isAsked && <BackToFigure />}
          <p class="formula">{relationFormula(relation.id, relation.formula, say.value.lang)}</p>
          {relation.remarks && (
            <p>
              {WORKINGS.remarks}: {relationRemarks(relation.id, relation.remarks, say.value.lang)}
            </p>
          )}
          <h2>{WORKINGS.try}</h2>
          <RelationForm relation={relation} />
          <h2>{WORKINGS.checks}</h2>
          <RelationChecks relation={relation} />
          <SourceList heading={WORKINGS.sources} sources={relation.sources} />
        </>
      )}
    </details>
  )
}

const matches = (relation: AnyRelation, words: string): boolean =>
  words
    .toLowerCase()
    .split(/\s+/)
    .every((word) =>
      `${relation.id} ${relation.title} ${relationTitle(relation, say.value.lang)} ${relation.formula}`
        .toLowerCase()
        .includes(word),
    )

/** Every formula, each with a form to try it and what it is held against. */
export function WorkingsPage() {
  const [words, setWords] = useState('')
  const { run, start } = useChecks(CATALOGUE)
  const asked = decodeURIComponent(location.hash.slice(1))
  useEffect(() => {
    if (asked !== '') document.getElementById(asked)?.scrollIntoView()
  }, [asked])
  const found = CATALOGUE.filter((relation) => matches(relation, words))
  return (
    <main class="workings">
      <h1>{WORKINGS.heading}</h1>
      <p>{WORKINGS.intro}</p>
      <div class="workings-tools">
        <div class="field">
          <label for="find-relation">{WORKINGS.find}</label>
          <input
            id="find-relation"
            type="search"
            value={words}
            onInput={(event) => setWords(event.currentTarget.value)}
          />
          <p class="hint" aria-live="polite">
            {WORKINGS.count(found.length, CATALOGUE.length)}
          </p>
        </div>
        <div>
          <button type="button" onClick={start} disabled={run.state === 'running'}>
            {WORKINGS.runAll}
          </button>
          <RunSummary run={run} />
        </div>
      </div>
      {found.map((relation) => (
        <RelationCard key={relation.id} relation={relation} isAsked={relation.id === asked} />
      ))}
    </main>
  )
}
