import type { Command } from 'commander'
import { printJson } from '../answer.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { jsonOption } from '../shared-options.ts'
import { dataOption, storePlace, withStore } from '../with-store.ts'

type Options = { readonly data?: string; readonly json?: true; readonly login?: string }

/** `owner reset`: whoever can read the store's disk lets its owner in again. The server may go on running. */
export function addOwner(program: Command, io: Io, end: End): void {
  program
    .command('owner')
    .description('let the owner in again')
    .command('reset')
    .description(
      'print a one-time code with which an owner chooses a new password, without the second factor',
    )
    .option('--login <name>', 'which owner, when there are several')
    .addOption(dataOption())
    .addOption(jsonOption())
    .action(async (options: Options) => {
      const code = await withStore(storePlace(options, io), io, { mustExist: true }, async (database) => {
        const { createAccess } = await import('../../store/access/access.ts')
        const { ownerResetCode } = await import('../../server/auth/owner-reset.ts')
        const made = await ownerResetCode(createAccess(database), options.login ?? null, new Date())
        if (!made.ok) {
          io.err(`${made.sentence}\n`)
          return EXIT.unfinished
        }
        const { login, expiresAt } = made
        if (options.json) {
          printJson(io, { schema: 'underlane/owner-reset@1', login, code: made.code, expiresAt })
        } else {
          io.out(`${made.code}\n`)
          const whose = login === null ? 'The first owner types it' : `${login} types it`
          io.err(`${whose} at /sign-in, "I have a code", before ${expiresAt}. It works once.\n`)
        }
        return EXIT.done
      })
      end(code)
    })
}
