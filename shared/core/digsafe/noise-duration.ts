import { relation } from '../relation.ts'

const HOUR_S = 3600
/** Level allowed for 8 h, and the decibels that halve the time. */
const RULES = { osha: { levelDba: 90, exchangeDb: 5 }, niosh: { levelDba: 85, exchangeDb: 3 } } as const
const SHIFT_S = 8 * HOUR_S

/** Hours a day a level at the ear is allowed. OSHA is the law; NIOSH is the stricter advice of health researchers. */
export const noiseDuration = relation({
  id: 'noise-duration',
  title: 'Hours a day a noise is allowed',
  formula: 'OSHA T = 8 h / 2^((L − 90)/5); NIOSH T = 8 h / 2^((L − 85)/3)',
  sources: ['Cfr1926Noise'],
  inputs: {
    level: {
      kind: 'count',
      words: 'level at the ear in dBA, by a meter',
      range: { min: 80, max: 115, hardMin: 0, hardMax: 200 },
    },
    rule: { choices: ['osha', 'niosh'], words: 'which rule' },
  },
  outputs: { duration: { kind: 'duration', words: 'allowed each day' } },
  fn: ({ level, rule }) => {
    const { levelDba, exchangeDb } = RULES[rule]
    return { durationS: SHIFT_S / 2 ** ((level - levelDba) / exchangeDb) }
  },
  checks: ['noise'],
  remarks:
    'At the operator’s ear, measured: no public level for the tool exists. Above 115 dBA no time at all is allowed; peaks stay at or below 140 dB. The printed table rounds.',
})
