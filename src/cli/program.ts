import { Command, CommanderError } from 'commander'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import { addAir } from './commands/air.ts'
import { addAudit } from './commands/audit.ts'
import { addBackup, addRestore } from './commands/backup.ts'
import { addChecks } from './commands/checks.ts'
import { addExport } from './commands/export.ts'
import { addGround } from './commands/ground.ts'
import { addOwner } from './commands/owner.ts'
import { addPlan } from './commands/plan.ts'
import { addRelation } from './commands/relation.ts'
import { addRelease } from './commands/release.ts'
import { addSchema } from './commands/schema.ts'
import { addServe } from './commands/serve.ts'
import { EXIT, type ExitCode } from './exit-codes.ts'
import type { Io } from './io.ts'
import { UsageError } from './usage-error.ts'

/** A command says how it ended by calling this once. */
export type End = (code: ExitCode) => void

/** Runs one command line (without node and the script's name) and answers its exit code. */
export async function runProgram(args: readonly string[], io: Io): Promise<ExitCode> {
  let code: ExitCode = EXIT.done
  const end: End = (ended) => {
    code = ended
  }
  const program = new Command('underlane')
    .description('Plans trenchless bores made with pneumatic piercing tools. It plans; it does not permit.')
    .version(ENGINE_VERSION, '--version', 'version of the engine')
    .exitOverride()
    .configureOutput({ writeOut: io.out, writeErr: io.err })
    .showSuggestionAfterError(true)
    .helpCommand('help [command]', 'how a command is used')
  addPlan(program, io, end)
  addRelease(program, io, end)
  addAir(program, io, end)
  addGround(program, io, end)
  addRelation(program, io, end)
  addChecks(program, io, end)
  addSchema(program, io, end)
  addServe(program, io, end)
  addBackup(program, io, end)
  addRestore(program, io, end)
  addExport(program, io, end)
  addAudit(program, io, end)
  addOwner(program, io, end)
  try {
    await program.parseAsync([...args], { from: 'user' })
    return code
  } catch (error) {
    if (error instanceof UsageError) {
      io.err(`${error.message}\n`)
      return EXIT.usage
    }
    // Commander has already said what is wrong, or has shown the help that was asked for.
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.usage
    throw error
  }
}
