import type { Command } from 'commander'
import { CATALOGUE, findRelation } from '../../../shared/core/catalogue.ts'
import { KINDS } from '../../../shared/core/kinds.ts'
import { type AnyRelation, type OutputField, propertyName } from '../../../shared/core/relation.ts'
import { formatQuantity } from '../../../shared/quantities/format-quantity.ts'
import { SOURCES } from '../../../shared/sources.ts'
import type { Language, Say } from '../../../shared/text/language.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { rangeNoteSentence } from '../../../shared/text/range-note.ts'
import { relationFormula, relationTitle, sourceWords } from '../../../shared/text/relation-words.ts'
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

const DEFAULT_MARK = { en: '(default)', es: '(valor usual)' } as const

function answerText(relation: AnyRelation, answer: RelationAnswer, lang: Language): string {
  const say: Say = { lang, system: 'us' }
  const outputs = Object.entries(relation.outputs).map(([key, field]) => {
    const name = propertyName(key, field)
    return valueRow(name, answer.outputs[name], field)
  })
  const inputs = Object.entries(relation.inputs).flatMap(([key, field]) => {
    const name = propertyName(key, field)
    const value = answer.inputs[name]
    const given =
      'kind' in field || 'choices' in field ? valueRow(name, value, field) : [name, valueText(value), '']
    return value === undefined ? [] : [[...given, answer.defaulted.includes(key) ? DEFAULT_MARK[lang] : '']]
  })
  const notes = answer.notes.map((note) => `${rangeNoteSentence(relation, note, say)}\n`).join('')
  const sources = relation.sources
    .map((key) => {
      const { citation, standing } = SOURCES[key]
      return `  ${sourceWords(key, citation, lang).text} (${planWord('standing', standing, say)})\n`
    })
    .join('')
  return `${relationTitle(relation, lang)}\n${relationFormula(relation.id, relation.formula, lang)}\n\n${columns(outputs)}\n${columns(inputs)}\n${notes}${sources}`
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
        else io.out(columns(CATALOGUE.map((each) => [each.id, relationTitle(each, options.lang)])))
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
      else io.out(answerText(relation, outcome.value, options.lang))
      end(EXIT.done)
    })
}
