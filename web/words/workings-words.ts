import { spoken } from './spoken-words.ts'

/** Labels of the list of workings. */
export const EN_WORKINGS = {
  heading: 'Workings',
  intro:
    'Every formula behind the figures, with its sources, a form to try it, and the printed values it is held against.',
  find: 'Find a formula',
  count: (shown: number, all: number) => `${shown} of ${all} formulas`,
  runAll: 'Run all printed checks',
  running: 'Running …',
  ran: (passed: number, failed: number) => `${passed} printed values met, ${failed} not met.`,
  try: 'Try it',
  example: 'Fill in a printed example',
  usual: (value: string) => `taken as ${value} when empty`,
  gives: 'Gives',
  sources: 'Sources',
  remarks: 'Mind',
  checks: 'Printed checks',
  runChecks: 'Run its printed checks',
  none: 'No printed value is held against it yet.',
  columns: ['case', 'value of', 'printed', 'ours', 'differs by', 'may differ by', 'verdict'],
  backTo: (figure: string) => `Back to the figure: ${figure}`,
  back: 'Back to the crossing',
  failed: 'The printed values could not be fetched.',
  met: 'met',
  notMet: 'not met',
  knownWrong: 'known wrong in print, rightly not met',
  noAnswer: 'no answer',
  position: 'longitude, latitude',
  list: 'numbers with commas between',
}
export const WORKINGS = spoken('workings', EN_WORKINGS)
