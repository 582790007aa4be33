import { type Command, Option } from 'commander'
import { parseCrossing } from '../../../shared/contracts/crossing.ts'
import { ENGINE_VERSION } from '../../../shared/core/engine-version.ts'
import { airFixes, FIX_ORDERS, type FixOrder, rankedFixes } from '../../../shared/core/plan/air-fixes.ts'
import { airReach } from '../../../shared/core/plan/air-reach.ts'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import { parseQuantity } from '../../../shared/quantities/parse-quantity.ts'
import { unitsOfFile } from '../../units-of-file.ts'
import { airText } from '../air-text.ts'
import { answerRefusal, printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { readJsonFile } from '../read-json-file.ts'
import { type AnswerOptions, jsonOption, languageOption } from '../shared-options.ts'

type Options = AnswerOptions & { readonly want: string; readonly by: FixOrder; readonly units?: 'us' | 'si' }

/** `air FILE`: what each tool gets, what would help it, and how far the line goes. */
export function addAir(program: Command, io: Io, end: End): void {
  program
    .command('air')
    .description('prove the air of one crossing: what each tool gets, what would help, how far it goes')
    .argument('<file>', 'crossing file; - reads it from standard input')
    .option('--want <pressure>', 'gauge pressure wanted at the tool', '85 psi')
    .addOption(new Option('--by <order>', 'what a change is best by').choices(FIX_ORDERS).default('minutes'))
    .addOption(
      new Option('--units <system>', 'units of the table; what the file is written in, if left out').choices([
        'us',
        'si',
      ]),
    )
    .addOption(jsonOption())
    .addOption(languageOption())
    .action(async (file: string, options: Options) => {
      const refusal = { json: options.json === true, language: options.lang }
      const given = await readJsonFile(file, io)
      if (!given.ok) return end(answerRefusal(io, given.issues, refusal))
      const wanted = parseQuantity(options.want, 'gaugePressure')
      if (!wanted.ok) return end(answerRefusal(io, [{ path: '--want', ...wanted.issue }], refusal))
      const input = parseCrossing(given.value)
      if (!input.ok) return end(answerRefusal(io, input.issues, refusal))
      const plan = planCrossing(input.value)
      if (!plan.ok) return end(answerRefusal(io, plan.issues, refusal))
      const fixes = rankedFixes(airFixes(input.value, plan.value), options.by)
      const reach = airReach(input.value, wanted.valueSi)
      const found = { plan: plan.value, fixes, reach }
      if (options.json === true) {
        printJson(io, {
          schema: 'underlane/air@1',
          engine: ENGINE_VERSION,
          air: plan.value.air,
          fixes,
          reach,
        })
      } else {
        const system = options.units ?? unitsOfFile(given.value)
        io.out(airText(found, { lang: options.lang, system }))
      }
      end(EXIT.done)
    })
}
