import { parseArgs } from 'node:util'
import { serverConfig } from '../config.ts'
import { projectRoot } from '../project-root.ts'
import { workingFolder } from '../working-folder.ts'
import { plansInThisThread } from './planning/plan-worker.ts'
import { serveUntilStopped } from './serve.ts'

const USAGE =
  'usage: npm start [-- --port N] [--host H] [--data DIR] [--empty]\n    [--tls-cert FILE --tls-key FILE | --insecure-http]'

const write = {
  out: (text: string) => process.stdout.write(text),
  err: (text: string) => process.stderr.write(text),
}

function typed() {
  try {
    const { values } = parseArgs({
      args: process.argv.slice(2),
      options: {
        port: { type: 'string' },
        host: { type: 'string' },
        data: { type: 'string' },
        empty: { type: 'boolean' },
        'insecure-http': { type: 'boolean' },
        'tls-cert': { type: 'string' },
        'tls-key': { type: 'string' },
      },
    })
    return values
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    write.err(`${error.message}\n${USAGE}\n`)
    return null
  }
}

async function main(): Promise<number> {
  const options = typed()
  if (options === null) return 64
  const root = projectRoot()
  const working = workingFolder(process.env, process.cwd(), root, 'start')
  const found = serverConfig(options, process.env, { root, working })
  if (!found.ok) {
    write.err(`${found.sentence}\n${USAGE}\n`)
    return 64
  }
  return serveUntilStopped(found.config, write)
}

if (!plansInThisThread()) process.exitCode = await main()
