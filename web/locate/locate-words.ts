import { spoken } from '../words/spoken-words.ts'

/** What the rules of a place say, and what was worked out from them. */
export const EN_LOCATE = {
  heading: (place: string) => `Locate rules: ${place}`,
  notBefore: (date: string) => `Not before ${date}. Check your ticket.`,
  noClock: 'No clock in law here: ask each owner for plans, and wait for all of them.',
  tooOld:
    'These rules were last checked over twelve months before the call: no date is worked out. Go by your ticket.',
  noMeeting:
    'What a meeting on site does to the start is not known here: no date is worked out. Go by your ticket.',
  callFirst: 'Enter when it was called in, and the earliest start is worked out.',
  marksDue: (date: string) => `Operators must have marked by ${date}.`,
  runsOut: (date: string) => `Runs out about ${date}; check your ticket.`,
  runsOutUnknown: (date: string) =>
    `How long a ticket lasts is not known here: plan on ${date}; check your ticket.`,
  open: 'The ticket stays open while the work goes on, its scope holds and the marks can be seen.',
  renewBy: (date: string) => `Renew by ${date}; check your ticket.`,
  beginBy: (date: string) => `Begin by ${date}, or call again; check your ticket.`,
  ticketEarlier:
    'The ticket starts earlier than these rules would have it. The ticket counts; ask the center if it was copied right.',
  zone: (distance: string) =>
    `Hand or vacuum only within ${distance} each side of a line, measured flat. It says nothing of depth.`,
  zoneUnknown: (distance: string) => `Zone set by each owner; plan on ${distance} each side until they say.`,
  calendar: 'Renewals for your calendar (.ics)',
  renewEvent: (name: string) => `Renew locate ticket: ${name}`,
  expireEvent: (name: string) => `Locate ticket expires: ${name}`,
  fromTicket: 'Off the printed ticket.',
  workedOut: 'Worked out, not off the ticket: check your ticket.',
  more: 'The rules in words, and where they are from',
  rows: {
    notice: 'Notice',
    life: 'Life',
    renewal: 'Renewal',
    zone: 'Zone',
    handDig: 'Hand digging',
    trenchless: 'Trenchless work',
    response: 'Operators’ answers',
    holidays: 'Days off',
    notes: 'Note',
  },
  trenchlessNotRead:
    'Text not read for boring or trenchless work. Say “trenchless, piercing tool” on the ticket all the same, so that sewers are marked.',
  checkedOn: (date: string, confidence: string) =>
    `Checked on ${date} in stored copies, not against the law in force. Confidence: ${confidence}.`,
  changing: 'This place has changed its rules lately, or is about to: look them up again.',
  fromMemory: (what: string) => `From memory, no source read: ${what}.`,
  parts: {
    notice: 'notice',
    life: 'life',
    renewal: 'renewal',
    zone: 'zone',
    handDig: 'hand digging',
    trenchless: 'trenchless work',
    response: 'answers',
    holidays: 'days off',
    notes: 'note',
    opens: 'opening hour',
    sources: 'citation',
  },
  confidence: { high: 'high', medium: 'medium', low: 'low' },
  sources: 'Sources',
  editedBy: (by: string, on: string) => `Changed for this firm by ${by} on ${on}`,
  edit: {
    heading: 'Correct these rules for your firm',
    by: 'Your name',
    why: 'Why, and where you read it',
    holidays: 'More days off (2026-03-04, 2026-04-03)',
    family: 'Counted as',
    families: {
      'full-days': 'full business days, then the next',
      'nth-day': 'on the nth business day',
      'from-next-opening': 'business days from the next opening',
      'clock-hours': 'clock hours without days off',
    },
    count: 'How many',
    lifeDays: 'Life in calendar days',
    zone: 'Zone each side',
    checkedOn: 'Sources read again on',
    save: 'Keep for everybody in the firm',
    saved: 'Kept.',
    refused: 'Not kept: look at the fields, or sign in as the owner.',
    noServer: 'No answer from the server: not kept.',
  },
  owner: (count: number) =>
    count === 0 ? 'Every owner listed has answered.' : `No answer yet: ${count}. No answer is hold.`,
}

export const LOCATE = spoken('locate', EN_LOCATE)
