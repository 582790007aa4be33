import type { Command } from 'commander'
import { serverConfig } from '../../config.ts'
import { projectRoot } from '../../project-root.ts'
import { EXIT } from '../exit-codes.ts'
import type { Io } from '../io.ts'
import type { End } from '../program.ts'
import { UsageError } from '../usage-error.ts'

type Options = {
  readonly port?: string
  readonly host?: string
  readonly data?: string
  readonly empty?: true
}

/** `serve`: the pages and the API on this machine. */
export function addServe(program: Command, io: Io, end: End): void {
  program
    .command('serve')
    .description('serve the pages and the API (build them first with npm start or npm run build)')
    .option('--port <number>', 'port to listen on')
    .option('--host <name>', 'address to listen on; without it only this machine is answered')
    .option('--data <folder>', 'folder of the store')
    .option('--empty', 'without the demo data')
    .action(async (options: Options) => {
      const found = serverConfig(options, io.environment, { root: projectRoot(), working: io.workingFolder })
      if (!found.ok) throw new UsageError(found.sentence)
      // Loaded only here: every other command starts without the server's packages.
      const { serveUntilStopped } = await import('../../server/serve.ts')
      end((await serveUntilStopped(found.config, io)) === 0 ? EXIT.done : EXIT.unfinished)
    })
}
