import type { Command } from 'commander'
import { done } from '../../../shared/core/outcome.ts'
import { afterSentence, gateMeaning, gateWord, openSentence } from '../../../shared/text/gate-sentences.ts'
import type { Language, Say } from '../../../shared/text/language.ts'
import { planDocument } from '../../plan-document.ts'
import { type Released, releaseOf } from '../../release-of.ts'
import { unitsOfFile } from '../../units-of-file.ts'
import { answerRefusal, printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { readJsonFile } from '../read-json-file.ts'
import { type AnswerOptions, jsonOption, languageOption } from '../shared-options.ts'
import { UsageError } from '../usage-error.ts'

type Options = AnswerOptions & { readonly now: string; readonly signed?: string; readonly bore: string }

/** Point by point: what is open, and the way on. */
function releaseText({ answer, reasons }: Released, say: Say): string {
  const { status, points, others, watchers, after } = answer
  const head = `${gateWord('status', status, say).toUpperCase()}: ${gateMeaning(answer, { bore: answer.bore, until: answer.until ?? '' }, say)}\n`
  const lines = points.flatMap(({ point, state, open }) => [
    `${String(point).padStart(3)} ${gateWord('point', point, say)}: ${gateWord('state', state, say)}\n`,
    ...open.map((each) => `      - ${openSentence(each, reasons, say)}\n`),
  ])
  const rest = others.map((each) => `      - ${openSentence(each, reasons, say)}\n`)
  const plan = rest.length === 0 ? '' : `    ${gateWord('point', 'others', say)}\n${rest.join('')}`
  const count = watchers.needed === 0 ? '' : `${watchers.named}/${watchers.needed}\n`
  return `${head}${lines.join('')}${plan}${count === '' ? '' : `    ${gateWord('item', 'watchers-named', say)}: ${count}`}${afterSentence(after, say)}\n`
}

/** What a plan and its signatures amount to. From a file it is hold or check: ready is said on site. */
export function addRelease(program: Command, io: Io, end: End): void {
  program
    .command('release')
    .description('what a plan and its sign-offs amount to: hold or check, never ready from a file')
    .argument('<file>', 'crossing file; - reads it from standard input')
    .requiredOption('--now <moment>', 'date and time on the clock of the place: 2026-03-02T09:10')
    .option('--signed <file>', 'list of sign-offs, underlane/sign-off@1')
    .option('--bore <number>', 'which bore of the crossing', '1')
    .addOption(jsonOption())
    .addOption(languageOption())
    .action(async (file: string, options: Options) => {
      const bore = Number(options.bore)
      if (!Number.isInteger(bore)) throw new UsageError('--bore takes a whole number')
      const language: Language = options.lang
      const refusal = { json: options.json === true, language }
      const crossing = await readJsonFile(file, io)
      if (!crossing.ok) return end(answerRefusal(io, crossing.issues, refusal))
      const signed = options.signed === undefined ? done([]) : await readJsonFile(options.signed, io)
      if (!signed.ok) return end(answerRefusal(io, signed.issues, refusal))
      const asked = { crossing: crossing.value, signOffs: signed.value, now: options.now, bore }
      const released = releaseOf(asked, planDocument(crossing.value))
      if (!released.ok) return end(answerRefusal(io, released.issues, refusal))
      if (options.json) printJson(io, released.value.answer)
      else io.out(releaseText(released.value, { lang: language, system: unitsOfFile(crossing.value) }))
      end(EXIT.done)
    })
}
