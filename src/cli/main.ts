import { projectRoot } from '../project-root.ts'
import { plansInThisThread } from '../server/planning/plan-worker.ts'
import { workingFolder } from '../working-folder.ts'
import { EXIT } from './exit-codes.ts'
import type { Io } from './io.ts'
import { runProgram } from './program.ts'

async function readStdin(): Promise<string> {
  const chunks: Buffer[] = []
  for await (const chunk of process.stdin) chunks.push(Buffer.from(chunk))
  return Buffer.concat(chunks).toString('utf8')
}

const io: Io = {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  readStdin,
  environment: process.env,
  workingFolder: workingFolder(process.env, process.cwd(), projectRoot(), 'underlane'),
}

async function main(): Promise<void> {
  // A reader such as `head` that has seen enough is no failure.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(EXIT.done)
    io.err(
      `Could not write the answer (${error.code ?? error.message}). Make room, or write it somewhere else.\n`,
    )
    process.exit(EXIT.unfinished)
  })

  // `serve` takes these over to end cleanly; for all other work an interruption is an end at once.
  const interrupted = () => process.exit(EXIT.interrupted)
  const [command] = process.argv.slice(2)
  if (command !== 'serve') {
    process.once('SIGINT', interrupted)
    process.once('SIGTERM', interrupted)
  }

  try {
    process.exitCode = await runProgram(process.argv.slice(2), io)
  } catch (error) {
    io.err(
      `Underlane has failed; this is a bug of ours. ${error instanceof Error ? error.stack : String(error)}\n`,
    )
    process.exitCode = EXIT.unfinished
  }
}

if (!plansInThisThread()) await main()
