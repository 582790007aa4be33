/** The plan in a line or two, as a crew lead would say it over the tailgate. */
export const EN_VERDICT = {
  times:
    '{ground:text}. Likely {hammerTimeS:duration} of hammering, {boreTimeS:duration} for the bore, {crossingTimeS:duration} for the whole crossing; {secondTry:odds} needs a second try.',
  'times/tenths':
    '{ground:text}. Likely {hammerTimeS:duration} of hammering, {boreTimeS:duration} for the bore, {crossingTimeS:duration} for the whole crossing; {secondTry:odds} need a second try.',
  brief: 'Hammering {hammerTimeS:duration}, {crossingTimeS:duration} in all; {secondTry:odds} tried again',
  'brief/no-times': 'Too few arrive to give a time',
  'times/unlikely':
    '{ground:text}. Only {arrives:odds} gets there on the first try. One that does: likely {hammerTimeS:duration} of hammering, {boreTimeS:duration} for the bore, {crossingTimeS:duration} for the whole crossing. Plan another tool, shorter shots or another method.',
  'no-times':
    '{ground:text}. Too few bores arrive to give a time: {arrives:odds} gets there. Another tool, shorter shots or another method.',
  clearance:
    '{kind:utility}: top at {topM:tape}, bottom at {bottomM:tape}. Your bore: top at {boreTopM:tape}, bottom at {boreBottomM:tape}.',
  'clearance/no-size':
    '{kind:utility}: {datum:datum} at {depthM:tape}, size not known. Your bore: top at {boreTopM:tape}, bottom at {boreBottomM:tape}.',
  'clearance/no-depth':
    '{kind:utility}: depth not known. Your bore: top at {boreTopM:tape}, bottom at {boreBottomM:tape}.',
  'clearance/parallel':
    '{kind:utility}: alongside, {offsetM:length} from the bore’s center to its center. Your bore: top at {boreTopM:tape}, bottom at {boreBottomM:tape}.',
  gap: 'Gap to the line {gapM:tapeDown}.',
  'gap/overlap': 'On paper the bore runs into it.',
  deeper: 'Short by {shortM:tapeUp}: take the bore that much deeper.',
  'deeper-or-other-end':
    'Short by {shortM:tapeUp}: take the bore that much deeper; or launch from the other pit, which saves the drift.',
  'deeper-other-end-short':
    'Short by {shortM:tapeUp}: take the bore that much deeper; launched from the other pit, {otherEndShortM:tapeUp} is enough.',
  shallower:
    'Short by {shortM:tapeUp}: the bore passes over it, so take it that much shallower if the cover allows, or move the path.',
  'shallower-or-other-end':
    'Short by {shortM:tapeUp}: the bore passes over it, so take it that much shallower if the cover allows; or launch from the other pit, which saves the drift.',
  'shallower-other-end-short':
    'Short by {shortM:tapeUp}: the bore passes over it, so take it that much shallower if the cover allows; launched from the other pit, {otherEndShortM:tapeUp} is enough.',
  sideways: 'Short by {shortM:tapeUp}: move the path away by that much.',
  contact:
    'Chance of contact {probability:chance}, of the lines you listed; it says nothing about the others and lifts no rule.',
  'no-contact/depth-not-measured': 'No chance of contact is given: its depth has not been measured.',
  'no-contact/no-depth': 'No chance of contact is given: nobody has given its depth.',
  'no-contact/no-size': 'No chance of contact is given: nobody has given its size.',
  'no-contact/parallel':
    'No chance of contact is given for a line alongside until it is opened up, with its depth and size measured.',
} as const
