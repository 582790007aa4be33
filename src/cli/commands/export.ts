import { resolve } from 'node:path'
import type { Command } from 'commander'
import { printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { jsonOption } from '../shared-options.ts'
import { dataOption, storePlace, withBackupErrors, withStore } from '../with-store.ts'

type Options = { readonly data?: string; readonly json?: true }

/** `export DIR`: everything as open files, while the server runs. */
export function addExport(program: Command, io: Io, end: End): void {
  program
    .command('export')
    .description('write everything the store has as open files (JSON, CSV, pictures) into a new folder')
    .argument('<folder>', 'a folder that is not there yet, or is empty')
    .addOption(dataOption())
    .addOption(jsonOption())
    .action(async (folder: string, options: Options) => {
      const target = resolve(io.workingFolder, folder)
      const code = await withBackupErrors(io, () =>
        withStore(storePlace(options, io), io, { mustExist: true }, async (database) => {
          const { writeExport } = await import('../../store/export/write-export.ts')
          const exported = await writeExport(database, target)
          if (options.json) {
            printJson(io, { schema: 'underlane/export@1', folder: target, documents: exported })
            return EXIT.done
          }
          for (const [what, count] of Object.entries(exported)) {
            if (count > 0)
              io.out(`${String(count).padStart(8)}  ${what === 'files' ? 'files of attachments' : what}\n`)
          }
          io.out(`Written to ${target}\n`)
          return EXIT.done
        }),
      )
      end(code)
    })
}
