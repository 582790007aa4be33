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
  readonly tlsCert?: string
  readonly tlsKey?: string
  readonly insecureHttp?: true
}

const asServerOptions = ({ tlsCert, tlsKey, insecureHttp, ...rest }: Options) => ({
  ...rest,
  'tls-cert': tlsCert,
  'tls-key': tlsKey,
  'insecure-http': insecureHttp,
})

/** `serve`: the pages and the API on this machine. */
export function addServe(program: Command, io: Io, end: End): void {
  program
    .command('serve')
    .description('serve the pages and the API (build them first with npm start or npm run build)')
    .option('--port <number>', 'port to listen on')
    .option(
      '--host <name>',
      'address to listen on; without it only this machine is answered; with it people sign in',
    )
    .option('--data <folder>', 'folder of the store')
    .option('--empty', 'without the demo data')
    .option('--tls-cert <file>', 'certificate, for https; with --tls-key')
    .option('--tls-key <file>', 'key of the certificate')
    .option('--insecure-http', 'serve a network without https; phones then get no offline app')
    .action(async (options: Options) => {
      const found = serverConfig(asServerOptions(options), io.environment, {
        root: projectRoot(),
        working: io.workingFolder,
      })
      if (!found.ok) throw new UsageError(found.sentence)
      // Loaded only here: every other command starts without the server's packages.
      const { serveUntilStopped } = await import('../../server/serve.ts')
      end((await serveUntilStopped(found.config, io)) === 0 ? EXIT.done : EXIT.unfinished)
    })
}
