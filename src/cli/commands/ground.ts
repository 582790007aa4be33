import { type Command, Option } from 'commander'
import { parseCrossing } from '../../../shared/contracts/crossing.ts'
import { parseFleet } from '../../../shared/contracts/fleet.ts'
import { ENGINE_VERSION } from '../../../shared/core/engine-version.ts'
import { done, type Outcome } from '../../../shared/core/outcome.ts'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import { saidOfGround } from '../../../shared/core/plan/said-of-ground.ts'
import { shorterShots } from '../../../shared/core/plan/shorter-shots.ts'
import { whatMatters } from '../../../shared/core/plan/what-matters.ts'
import { type FleetTool, whichTool } from '../../../shared/core/plan/which-tool.ts'
import { unitsOfFile } from '../../units-of-file.ts'
import { answerRefusal, printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import { type GroundFound, groundText } from '../ground-text.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { readJsonFile } from '../read-json-file.ts'
import { type AnswerOptions, jsonOption, languageOption } from '../shared-options.ts'

type Options = AnswerOptions & { readonly tools?: string; readonly units?: 'us' | 'si' }

async function readFleet(file: string | undefined, io: Io): Promise<Outcome<readonly FleetTool[] | null>> {
  if (file === undefined) return done(null)
  const given = await readJsonFile(file, io)
  return given.ok ? parseFleet(given.value) : given
}

function find(input: CrossingInput, fleet: readonly FleetTool[] | null): Outcome<GroundFound> {
  const ground = saidOfGround(input)
  if (!ground.ok) return ground
  const plan = planCrossing(input)
  if (!plan.ok) return plan
  const matters = whatMatters(input)
  if (!matters.ok) return matters
  return done({
    ground: ground.value,
    matters: matters.value,
    shorterShots: shorterShots(input, plan.value),
    tools: fleet === null ? null : whichTool(input, fleet),
  })
}

/** `ground FILE`: how far the evidence agrees, what is worth finding out, and which tool of a list. */
export function addGround(program: Command, io: Io, end: End): void {
  program
    .command('ground')
    .description('what was said of the ground, what matters most, shorter shots, and which tool of a list')
    .argument('<file>', 'crossing file; - reads it from standard input')
    .option('--tools <file>', 'list of tool files, as JSON: ranks them for this bore')
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
      const fleet = await readFleet(options.tools, io)
      if (!fleet.ok) return end(answerRefusal(io, fleet.issues, refusal))
      const input = parseCrossing(given.value)
      if (!input.ok) return end(answerRefusal(io, input.issues, refusal))
      const found = find(input.value, fleet.value)
      if (!found.ok) return end(answerRefusal(io, found.issues, refusal))
      if (options.json === true) {
        printJson(io, { schema: 'underlane/ground@1', engine: ENGINE_VERSION, ...found.value })
      } else {
        const system = options.units ?? unitsOfFile(given.value)
        io.out(groundText(found.value, { lang: options.lang, system }))
      }
      end(EXIT.done)
    })
}
