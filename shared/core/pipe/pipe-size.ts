import { PIPE_SYSTEM_IDS } from '../../tables/pipes.ts'
import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'
import { findPipe } from './find-pipe.ts'

/** Outside diameter and wall of a pipe by its printed size; walls of polyethylene and PVC are the least ones. */
export const pipeSize = relation({
  id: 'pipe-size',
  title: 'Size of a pipe',
  formula: 'by the table of its standard',
  sources: [
    'AstmD3035',
    'AstmD2513',
    'AstmD2737',
    'AstmF876',
    'Iso4427',
    'AwwaC906',
    'AstmF2160',
    'Din16874',
    'En50411',
    'AstmB88',
    'AstmB88M',
    'AsmeB3610',
    'SteelConduit',
    'AstmD1785',
    'Ul651',
    'AstmD3034',
  ],
  inputs: {
    system: { choices: PIPE_SYSTEM_IDS, words: 'what pipe it is' },
    size: { word: true, words: 'nominal size as printed: 3/4, 1-1/4 in, 63 mm' },
    sdr: {
      word: true,
      words: 'dimension ratio, schedule or wall letter: 9, SDR 11, SCH 40, K; empty for the usual wall',
      default: '',
    },
  },
  outputs: {
    outsideDiameter: { kind: 'diameter', words: 'outside diameter' },
    wall: { kind: 'diameter', words: 'wall' },
  },
  fn: ({ system, size, sdr }) => {
    const pipe = findPipe(system, size, sdr)
    if (!pipe.ok) {
      const [issue] = pipe.issues
      const nearest = issue?.candidates?.map((each) => each.value).join(', ') ?? ''
      throw new PreconditionError(`no ${issue?.path} ${issue?.given} in ${system}; nearest: ${nearest}`)
    }
    return { outsideDiameterM: pipe.value.outsideDiameterM, wallM: pipe.value.wallM }
  },
  checks: ['pipe-sizes'],
  remarks: 'The tables are copies of the standards; the pipe on the trailer rules.',
})
