import { writeFile } from 'node:fs/promises'
import { resolve } from 'node:path'
import { type Command, Option } from 'commander'
import { parseCrossing } from '../../../shared/contracts/crossing.ts'
import { done, type Outcome, refused } from '../../../shared/core/outcome.ts'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import { drawingStyle } from '../../../shared/drawing/drawing-style.ts'
import { longSection } from '../../../shared/drawing/long-section.ts'
import { standaloneSvg } from '../../../shared/drawing/svg-text.ts'
import { type PlanDocument, planDocument } from '../../plan-document.ts'
import { planWithText } from '../../plan-with-text.ts'
import { unitsOfFile } from '../../units-of-file.ts'
import { answerRefusal, printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import { planText } from '../plan-text.ts'
import type { End } from '../program.ts'
import { readJsonFile } from '../read-json-file.ts'
import { type AnswerOptions, jsonOption, languageOption } from '../shared-options.ts'

type Options = AnswerOptions & {
  readonly units?: 'us' | 'si'
  readonly working?: true
  readonly svg?: string
  readonly sheet: 'screen' | 'letter' | 'a4'
}

/** Wide enough for a desk, and for a page of a report. */
const SVG_WIDTH_PX = 1200

const WRITING_FAILS: Readonly<Record<string, string>> = {
  ENOENT: 'a folder that exists',
  EISDIR: 'a file, not a folder',
  EACCES: 'a place that may be written',
  ENOTDIR: 'a folder that exists',
}

/** The long section as a file by itself: it needs neither fonts nor styles from elsewhere. */
async function writeSvg(
  input: CrossingInput,
  plan: PlanDocument,
  units: 'us' | 'si',
  options: Options,
  io: Io,
): Promise<Outcome<null>> {
  if (options.svg === undefined) return done(null)
  const { tree } = longSection(input, plan, {
    system: units,
    lang: options.lang,
    widthPx: SVG_WIDTH_PX,
    sheet: options.sheet,
    heading: true,
  })
  try {
    await writeFile(resolve(io.workingFolder, options.svg), standaloneSvg(tree, drawingStyle('file')))
    return done(null)
  } catch (error) {
    const accepted = error instanceof Error && 'code' in error ? WRITING_FAILS[String(error.code)] : undefined
    if (accepted === undefined) throw error
    return refused({ path: '--svg', code: 'not-available', given: options.svg, accepted })
  }
}

/** `plan FILE`: one crossing planned; a held plan is a plan. */
export function addPlan(program: Command, io: Io, end: End): void {
  program
    .command('plan')
    .description('plan one crossing')
    .argument('<file>', 'crossing file; - reads it from standard input')
    .addOption(
      new Option('--units <system>', 'units of the table; what the file is written in, if left out').choices([
        'us',
        'si',
      ]),
    )
    .option('--working', 'print every formula used, with its inputs and sources')
    .option('--svg <file>', 'write the long section as an SVG drawing')
    .addOption(
      new Option('--sheet <sheet>', 'what the drawing is for; paper is drawn to a scale')
        .choices(['screen', 'letter', 'a4'])
        .default('screen'),
    )
    .addOption(jsonOption())
    .addOption(languageOption())
    .action(async (file: string, options: Options, command: Command) => {
      const refusal = { json: options.json === true, language: options.lang }
      const given = await readJsonFile(file, io)
      if (!given.ok) return end(answerRefusal(io, given.issues, refusal))
      const outcome = planDocument(given.value)
      if (!outcome.ok) return end(answerRefusal(io, outcome.issues, refusal))
      const input = parseCrossing(given.value)
      if (!input.ok) return end(answerRefusal(io, input.issues, refusal))
      const units = options.units ?? unitsOfFile(given.value)
      const drawn = await writeSvg(input.value, outcome.value, units, options, io)
      if (!drawn.ok) return end(answerRefusal(io, drawn.issues, refusal))
      const asked = { units, language: options.lang, working: options.working === true }
      if (!options.json) io.out(planText(outcome.value, input.value, asked))
      else if (command.getOptionValueSource('lang') !== 'cli') printJson(io, outcome.value)
      else printJson(io, planWithText(outcome.value, { lang: options.lang, system: units }))
      end(EXIT.done)
    })
}
