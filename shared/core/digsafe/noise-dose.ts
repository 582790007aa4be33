import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'
import { noiseDuration } from './noise-duration.ts'

const HOUR_S = 3600

/** Mixed noise of a day: each level with its hours, as a share of what is allowed. Above 1 the day fails. */
export const noiseDose = relation({
  id: 'noise-dose',
  title: 'Noise of a day as a share of what is allowed',
  formula: 'F = Σ C/T, T by the rule’s formula',
  sources: ['Cfr1926Noise'],
  inputs: {
    levels: { list: 'numbers', words: 'levels at the ear in dBA' },
    hours: { list: 'numbers', words: 'hours a day at each of them, in the same order' },
    rule: { choices: ['osha', 'niosh'], words: 'which rule', default: 'osha' },
  },
  outputs: { dose: { kind: 'ratio', words: 'share of what is allowed; above 1 fails' } },
  fn: ({ levels, hours, rule }) => {
    if (levels.length !== hours.length) throw new PreconditionError('as many hours as levels are needed')
    let dose = 0
    levels.forEach((level, index) => {
      const spentS = (hours[index] ?? 0) * HOUR_S
      if (spentS < 0 || level < 0 || level > 200)
        throw new PreconditionError('a level or a time out of range')
      dose += spentS / noiseDuration.fn({ level, rule: rule === 'niosh' ? 'niosh' : 'osha' }).durationS
    })
    return { dose }
  },
  checks: ['noise'],
  remarks: 'Peaks stay at or below 140 dB, and nobody is above 115 dBA however short.',
})
