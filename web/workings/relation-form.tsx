import { useState } from 'preact/hooks'
import { evaluateRelation } from '../../shared/contracts/relation-request.ts'
import type { Issue } from '../../shared/core/outcome.ts'
import type { AnyRelation, InputField } from '../../shared/core/relation.ts'
import { choiceWord, quantityWords } from '../../shared/text/relation-words.ts'
import { describedBy, FieldFrame } from '../fields/field-frame.tsx'
import { issuesAt } from '../fields/field-place.ts'
import { IssueNotes } from '../fields/issue-notes.tsx'
import { namedValues, shownValue } from '../fields/relation-values.ts'
import { say } from '../state/unit-choice.ts'
import { WORKINGS } from '../words/workings-words.ts'
import { tablesOf } from './checks.tsx'
import { RangeNotes } from './range-notes.tsx'
import { ValueTable } from './value-table.tsx'

type Texts = Readonly<Record<string, string>>

function hintOf(field: InputField): string | undefined {
  if ('default' in field && field.default !== undefined)
    return WORKINGS.usual(shownValue(field.default, field))
  if ('position' in field) return WORKINGS.position
  return 'list' in field ? WORKINGS.list : undefined
}

type InputProps = {
  readonly relation: string
  readonly name: string
  readonly field: InputField
  readonly text: string
  readonly issues: readonly Issue[]
  readonly onType: (text: string) => void
}

function RelationInput({ relation, name, field, text, issues, onType }: InputProps) {
  const id = `try-${relation}-${name}`
  return (
    <FieldFrame
      id={id}
      label={`${name}: ${quantityWords(field.words, say.value.lang)}`}
      hint={hintOf(field)}
      issues={issues}
      onTake={onType}
    >
      {'choices' in field ? (
        <select
          id={id}
          value={text}
          aria-describedby={describedBy(id)}
          onChange={(event) => onType(event.currentTarget.value)}
        >
          <option value="" />
          {field.choices.map((each) => (
            <option key={each} value={each}>
              {choiceWord(each, say.value)}
            </option>
          ))}
        </select>
      ) : (
        <input
          id={id}
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          value={text}
          aria-describedby={describedBy(id)}
          aria-invalid={issues.length > 0}
          onInput={(event) => onType(event.currentTarget.value)}
        />
      )}
    </FieldFrame>
  )
}

/** What a printed table gives this relation, to start from. */
async function printedExample(relation: AnyRelation): Promise<Texts> {
  for (const load of Object.values(tablesOf([relation]))) {
    const { checks } = await load()
    const found = checks.find((check) => check.relation === relation.id)
    if (found) return found.given
  }
  return {}
}

/** The formula with its inputs open: worked out on every change. */
export function RelationForm({ relation }: { readonly relation: AnyRelation }) {
  const [texts, setTexts] = useState<Texts>({})
  const given = Object.fromEntries(Object.entries(texts).filter(([, text]) => text.trim() !== ''))
  const isTouched = Object.keys(given).length > 0
  const outcome = evaluateRelation(relation, given)
  const issues = outcome.ok || !isTouched ? [] : outcome.issues
  const placed = Object.keys(relation.inputs)
  return (
    <div class="relation-form">
      <div class="fields">
        {Object.entries<InputField>(relation.inputs).map(([name, field]) => (
          <RelationInput
            key={name}
            relation={relation.id}
            name={name}
            field={field}
            text={texts[name] ?? ''}
            issues={issuesAt(issues, name)}
            onType={(text) => setTexts({ ...texts, [name]: text })}
          />
        ))}
      </div>
      {relation.checks.length > 0 && (
        <button type="button" class="quiet" onClick={async () => setTexts(await printedExample(relation))}>
          {WORKINGS.example}
        </button>
      )}
      <IssueNotes
        id={`try-${relation.id}-issues`}
        issues={issues.filter((issue) => !placed.includes(issue.path))}
      />
      <div role="status">
        {outcome.ok && (
          <>
            <ValueTable
              heading={WORKINGS.gives}
              values={namedValues(relation.outputs, outcome.value.outputs)}
            />
            <RangeNotes relation={relation} notes={outcome.value.notes} />
          </>
        )}
      </div>
    </div>
  )
}
