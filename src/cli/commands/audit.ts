import type { Command } from 'commander'
import type { Verified } from '../../store/audit.ts'
import { printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { jsonOption } from '../shared-options.ts'
import { dataOption, storePlace, withStore } from '../with-store.ts'

type Broken = NonNullable<Verified['broken']>

const WHAT: Readonly<Record<Broken['what'], string>> = {
  'line-altered': 'is not what was written',
  'line-missing': 'follows a line that is gone',
  'document-altered': 'is not what its history says',
  'document-missing': 'has a history and is gone',
  'history-missing': 'has a version its history does not know',
}

const sentence = (broken: Broken): string => {
  const line = 'seq' in broken ? `Line ${broken.seq} of the history: ` : ''
  return `${line}${broken.noun} ${broken.id}, version ${broken.version}, ${WHAT[broken.what]}.`
}

/** `audit verify`: the whole history, line by line, and every document against it. */
export function addAudit(program: Command, io: Io, end: End): void {
  program
    .command('audit')
    .description('look after the history of the store')
    .command('verify')
    .description('walk the history from its first line and name the first row that is not as it was written')
    .addOption(dataOption())
    .addOption(jsonOption())
    .action(async (options: { readonly data?: string; readonly json?: true }) => {
      const code = await withStore(storePlace(options, io), io, { mustExist: true }, async (database) => {
        const { verifyHistory } = await import('../../store/audit.ts')
        const { end: chain, broken } = await verifyHistory(database)
        if (options.json) {
          printJson(io, {
            schema: 'underlane/audit@1',
            lines: chain.seq,
            lastHash: chain.hash || null,
            broken,
          })
        }
        if (broken !== null) {
          io.err(`${sentence(broken)}\n`)
          return EXIT.unfinished
        }
        if (!options.json) io.out(`${chain.seq} lines, one chain, whole. Last: ${chain.hash}\n`)
        return EXIT.done
      })
      end(code)
    })
}
