import { runProgram } from '../../src/cli/program.ts'

/** Runs one command line inside the test and gives back all it said. */
export async function run(
  args: readonly string[],
  world: { stdin?: string; workingFolder?: string; environment?: Record<string, string> } = {},
) {
  let stdout = ''
  let stderr = ''
  const code = await runProgram(args, {
    out: (text) => {
      stdout += text
    },
    err: (text) => {
      stderr += text
    },
    readStdin: async () => world.stdin ?? '',
    environment: world.environment ?? {},
    workingFolder: world.workingFolder ?? '/',
  })
  return { code, stdout, stderr }
}

/** A crossing with all that is required and nothing more; nobody has been asked about utilities, so it is held. */
export const A_CROSSING = {
  schema: 'underlane/crossing@1',
  name: 'Alder Road 14, water service',
  line: { length: '42 ft' },
  depth: { launch: '4 ft', reception: '3 ft 9 in', to: 'centre' },
  ground: [{ uscs: 'CL', sptN: 9, stones: 'few' }],
  pipes: [{ system: 'pe-cts', size: '1 in', sdr: 9, count: 1 }],
  tool: { diameter: '2.5 in' },
  air: {
    compressor: { freeAirDelivery: '185 cfm', pressure: '100 psi' },
    hoses: [{ bore: '3/4 in', length: '100 ft' }],
  },
}
