import { JURISDICTIONS } from '../../tables/jurisdictions.ts'
import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'
import { readCivil, writeCivil } from './civil.ts'
import { EXPIRY_BECAUSE, noticeDates, START_BECAUSE } from './notice-dates.ts'

const written = (minute: number | null): string | null => (minute === null ? null : writeCivil(minute))

/**
 * Earliest start of work after a locate call, and when the ticket runs out, by the rules of one state or country. Not
 * before; check your ticket. Civil times on the clock of the place dug.
 */
export const earliestStart = relation({
  id: 'earliest-start',
  title: 'Earliest start after a locate call',
  formula:
    'day of call = 0; four ways to count: full days, nth day, hours from the next opening, clock hours',
  sources: ['OneCallRules', 'OneCallTable'],
  inputs: {
    jurisdiction: {
      choices: JURISDICTIONS.map((row) => row.id),
      words: 'state or country: US-VA, CA-ON, GB',
    },
    called: { civil: true, zoneIn: 'zone', words: 'when it was called in, on the clock of the place dug' },
    zone: {
      word: true,
      words: 'time zone of the place dug, to read a call given with its offset: America/New_York',
      default: 'local',
    },
    meeting: {
      choices: ['no', 'yes'],
      words: 'a meeting with the operators on site was asked for',
      default: 'no',
    },
  },
  outputs: {
    startIso: { civil: true, orNull: true, words: 'not before; check your ticket' },
    startBecause: { choices: START_BECAUSE, words: 'how the start was found, or why there is none' },
    marksDueIso: {
      civil: true,
      orNull: true,
      words: 'operators must have marked by, where the text says so',
    },
    expiryIso: { civil: true, orNull: true, words: 'ticket runs out; check your ticket' },
    expiryBecause: { choices: EXPIRY_BECAUSE, words: 'how the expiry was found, or why there is none' },
    renewByIso: {
      civil: true,
      orNull: true,
      words: 'renew by, or begin by where the ticket stays open; check your ticket',
    },
    checkedOn: { civil: true, words: 'day the rules of this place were last checked' },
  },
  fn: ({ jurisdiction, called, meeting }) => {
    const row = JURISDICTIONS.find((each) => each.id === jurisdiction)
    const calledMin = readCivil(called)
    if (!row || calledMin === null)
      throw new PreconditionError(`no row or no date: ${jurisdiction}, ${called}`)
    const dates = noticeDates(row, calledMin, meeting === 'yes')
    return {
      startIso: written(dates.startMin),
      startBecause: dates.startBecause,
      marksDueIso: written(dates.marksDueMin),
      expiryIso: written(dates.expiryMin),
      expiryBecause: dates.expiryBecause,
      renewByIso: written(dates.renewByMin),
      checkedOn: row.checkedOn,
    }
  },
  checks: ['locate-calendar'],
  remarks:
    'Planning help, not legal advice: nothing is worked out from a row checked over twelve months before the call, and the printed ticket always wins.',
})
