import type { Command } from 'commander'
import { jsonSchema, SCHEMA_NAMES } from '../../schemas.ts'
import { printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { jsonOption } from '../shared-options.ts'
import { UsageError } from '../usage-error.ts'

/** `schema [NAME]`: the JSON Schemas of files and answers. */
export function addSchema(program: Command, io: Io, end: End): void {
  program
    .command('schema')
    .description('list the JSON Schemas, or print one')
    .argument('[name]', `one of ${SCHEMA_NAMES.join(', ')}`)
    .addOption(jsonOption())
    .action((name: string | undefined, options: { readonly json?: true }) => {
      if (name === undefined && options.json) printJson(io, SCHEMA_NAMES)
      else if (name === undefined) io.out(SCHEMA_NAMES.map((each) => `${each}\n`).join(''))
      else {
        const schema = jsonSchema(name)
        if (schema === null)
          throw new UsageError(`There is no schema "${name}"; there are ${SCHEMA_NAMES.join(', ')}.`)
        printJson(io, schema)
      }
      end(EXIT.done)
    })
}
