import type { Command } from 'commander'
import { CATALOGUE, findRelation } from '../../../shared/core/catalogue.ts'
import { KINDS } from '../../../shared/core/kinds.ts'
import { type AnyRelation, type OutputField, propertyName } from '../../../shared/core/relation.ts'
import { formatQuantity } from '../../../shared/quantities/format-quantity.ts'
import { SOURCES } from '../../../shared/sources.ts'
import { answerRelation, type RelationAnswer, relationList, unknownRelation } from '../../relation-answer.ts'
import { answerRefusal, columns, printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { type AnswerOptions, jsonOption, languageOption } from '../shared-options.ts'
import { UsageError } from '../usage-error.ts'
import { valueText } from '../workings-text.ts'

function pairOf(argument: string): readonly [string, string] {
  const at = argument.indexOf('=')
  if (at < 1) throw new UsageError(`"${argument}" is no input: write name=value.`)
  return [argument.slice(0, at), argument.slice(at + 1)]
}

function valueRow(name: string, value: unknown, field: OutputField | undefined): readonly string[] {
  if (field === undefined || !('kind' in field) || typeof value !== 'number')
    return [name, valueText(value), '']
  const unit = KINDS[field.kind].unit
  const inUsUnits = formatQuantity(value, field.kind, 'us')
  const si = `${valueText(value)}${unit === '1' ? '' : ` ${unit}`}`
  return [name, si, unit === '1' ? '' : inUsUnits]
}

function answerText(relation: AnyRelation, answer: RelationAnswer): string {
  const outputs = Object.entries(relation.outputs).map(([key, field]) => {
    const name = propertyName(key, field)
    return valueRow(name, answer.outputs[name], field)
  })
  const inputs = Object.entries(relation.inputs).flatMap(([key, field]) => {
    const name = propertyName(key, field)
    const value = answer.inputs[name]
    const given =
      'kind' in field || 'choices' in field ? valueRow(name, value, field) : [name, valueText(value), '']
    return value === undefined ? [] : [[...given, answer.defaulted.includes(key) ? '(default)' : '']]
  })
  const notes = answer.notes.map((note) => `${JSON.stringify(note)}\n`).join('')
  const sources = relation.sources
    .map((key) => `  ${SOURCES[key].citation} (${SOURCES[key].standing})\n`)
    .join('')
  return `${relation.title}\n${relation.formula}\n\n${columns(outputs)}\n${columns(inputs)}\n${notes}${sources}`
}

/** `relation [ID] [name=value …]`: the formulas, listed or evaluated. */
export function addRelation(program: Command, io: Io, end: End): void {
  program
    .command('relation')
    .description('list the formulas, or evaluate one')
    .argument('[id]', 'which formula')
    .argument('[name=value...]', 'its inputs, each with its unit: bore="3/4 in"')
    .addOption(jsonOption())
    .addOption(languageOption())
    .action((id: string | undefined, inputs: readonly string[], options: AnswerOptions) => {
      const json = options.json === true
      if (id === undefined) {
        if (json) printJson(io, relationList())
        else io.out(columns(CATALOGUE.map((each) => [each.id, each.title])))
        return end(EXIT.done)
      }
      const relation = findRelation(id)
      if (relation === undefined) {
        return end(
          answerRefusal(io, [unknownRelation(id)], { json, language: options.lang, exit: EXIT.usage }),
        )
      }
      const outcome = answerRelation(id, inputs.map(pairOf))
      if (!outcome.ok) return end(answerRefusal(io, outcome.issues, { json, language: options.lang }))
      if (json) printJson(io, outcome.value)
      else io.out(answerText(relation, outcome.value))
      end(EXIT.done)
    })
}
