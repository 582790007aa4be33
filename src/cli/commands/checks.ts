import type { Command } from 'commander'
import { runChecks } from '../../../shared/contracts/run-checks.ts'
import { CATALOGUE } from '../../../shared/core/catalogue.ts'
import { PUBLISHED } from '../../../shared/published/catalogue.ts'
import { columns, printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { jsonOption } from '../shared-options.ts'
import { valueText } from '../workings-text.ts'

type Check = Awaited<ReturnType<typeof runChecks>>['checks'][number]

const row = (check: Check): readonly string[] => [
  check.pass ? 'ok' : 'FAILED',
  check.relation,
  check.name,
  `expected ${valueText(check.expected)}`,
  `computed ${valueText(check.computed)}`,
  check.source,
]

/** `checks`: every formula against the values printed in its sources. */
export function addChecks(program: Command, io: Io, end: End): void {
  program
    .command('checks')
    .description('hold every formula against its printed values')
    .addOption(jsonOption())
    .action(async (options: { readonly json?: true }) => {
      const result = await runChecks(CATALOGUE, PUBLISHED)
      if (options.json) printJson(io, { schema: 'underlane/checks@1', ...result })
      else io.out(`${columns(result.checks.map(row))}${result.passed} passed, ${result.failed} failed\n`)
      end(result.failed === 0 ? EXIT.done : EXIT.unfinished)
    })
}
