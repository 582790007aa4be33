import { resolve } from 'node:path'
import type { Command } from 'commander'
import type { Manifest } from '../../store/backup/backup-tables.ts'
import { printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { jsonOption } from '../shared-options.ts'
import { dataOption, storePlace, withBackupErrors, withStore } from '../with-store.ts'

type Options = { readonly data?: string; readonly json?: true }

function sayWhat(io: Io, manifest: Manifest, done: string, options: Options): void {
  if (options.json) {
    printJson(io, manifest)
    return
  }
  const filled = manifest.files.filter(({ rows }) => rows !== null && rows > 0)
  for (const { name, rows } of filled) io.out(`${String(rows).padStart(8)}  ${name.replace('.jsonl', '')}\n`)
  const attachments = manifest.files.filter(({ rows }) => rows === null).length
  if (attachments > 0) io.out(`${String(attachments).padStart(8)}  attachments\n`)
  io.out(`${done}\n`)
}

/** `backup FILE`: everything in one file, while the server runs. */
export function addBackup(program: Command, io: Io, end: End): void {
  program
    .command('backup')
    .description('write everything the store has into one file; the server may go on running')
    .argument('<file>', 'the file to write, such as underlane-2026-03-02.tar.gz')
    .addOption(dataOption())
    .addOption(jsonOption())
    .action(async (file: string, options: Options) => {
      const target = resolve(io.workingFolder, file)
      const code = await withBackupErrors(io, () =>
        withStore(storePlace(options, io), io, { mustExist: true }, async (database) => {
          const { writeBackup } = await import('../../store/backup/write-backup.ts')
          const manifest = await writeBackup(database, target, new Date())
          sayWhat(io, manifest, `Written to ${target}`, options)
          return EXIT.done
        }),
      )
      end(code)
    })
}

/** `restore FILE`: a backup into an empty store, of the same kind or the other. */
export function addRestore(program: Command, io: Io, end: End): void {
  program
    .command('restore')
    .description('put a backup into an empty store: a folder, or the database of DATABASE_URL')
    .argument('<file>', 'a file that backup wrote')
    .addOption(dataOption())
    .addOption(jsonOption())
    .action(async (file: string, options: Options) => {
      const place = storePlace(options, io)
      const code = await withBackupErrors(io, async () => {
        const { readBackup } = await import('../../store/backup/read-backup.ts')
        const backup = await readBackup(resolve(io.workingFolder, file))
        try {
          return await withStore(place, io, { mustExist: false }, async (database) => {
            const { restoreBackup } = await import('../../store/backup/restore-backup.ts')
            await restoreBackup(database, backup)
            sayWhat(io, backup.manifest, `Restored into ${database.place}`, options)
            return EXIT.done
          })
        } finally {
          backup.close()
        }
      })
      end(code)
    })
}
