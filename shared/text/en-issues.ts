/** What is wrong with what was given. `{given:text}` is echoed back; what would do follows in a sentence of its own. */
export const EN_ISSUES = {
  required: 'This is missing.',
  'unknown-key': '“{given:text}” is not a key known here.',
  'wrong-type': '“{given:text}” is not the kind of value that belongs here.',
  'wrong-type/bare': 'This is not the kind of value that belongs here.',
  'unknown-choice': '“{given:text}” is not on the list.',
  'unknown-choice/bare': 'A value is missing here, or is not on the list.',
  'not-a-quantity': '“{given:text}” does not read as a number with a unit.',
  'not-a-quantity/pipe': '“{given:text}” is not a pipe known here.',
  'not-a-quantity/zero-denominator': '“{given:text}” divides by zero.',
  'unknown-unit': 'The unit in “{given:text}” is not known.',
  'wrong-dimension': 'The unit in “{given:text}” measures something else.',
  'wrong-dimension/gauge': '“{given:text}” is above the air around (gauge); that is not what is asked here.',
  'wrong-dimension/absolute': '“{given:text}” is above vacuum (absolute); that is not what is asked here.',
  'wrong-dimension/difference': '“{given:text}” is a difference; that is not what is asked here.',
  'comma-in-number': '“{given:text}” has a comma, which reads two ways. Write decimals with a point.',
  'too-long': 'This is too long.',
  'too-long/most': 'This is too long: at most {most:whole} characters.',
  'out-of-range': 'This is outside what can be.',
  'out-of-range/given': '“{given:text}” is outside what can be.',
  ask: 'This can be read more than one way.',
  'ask/no-unit': '“{given:text}” has no unit, and we do not guess one.',
  'ask/given': '“{given:text}” can be read more than one way.',
  'not-finite': 'This is not a number that can be worked with.',
  'not-json': 'This does not read as JSON.',
  'not-json/given': 'This does not read as JSON: {given:text}.',
  'unknown-relation': 'No formula goes by the name “{given:text}”.',
  'not-available': 'Not available here.',
  'not-available/given': '“{given:text}” is not available here.',
  'inputs-conflict': 'These do not go together.',
  'no-convergence':
    'The sum did not settle on an answer. Look for a slip in the figures; if there is none, tell us.',
  'pipe-does-not-pass':
    'The pipe does not pass through the bore. Use a larger tool, a second pass with an expander, or a smaller pipe.',
  'pipe-does-not-pass/sizes':
    'The pipe does not pass: {bundleM:diameter} through a bore of {boreM:diameter}. Use a larger tool, a second pass with an expander, or a smaller pipe.',
  'stretch-outside-line': 'This lies at {stationM:length}, past the end of the line at {lengthM:length}.',
  'no-operating-point': 'Compressor, hose and tool find no pressure they can run at. Look at all three.',
  'no-operating-point/choked':
    'The hose line cannot pass the air the tool wants. Use a larger bore, a shorter line or fewer tools.',
  'no-operating-point/no-pressure':
    'The compressor cannot hold any useful pressure against this tool. Use a larger compressor, a smaller tool or fewer tools.',
  'no-ground-here': 'Nobody has said what the ground is from {fromM:length} to {toM:length}.',
  'body-too-large': 'This is too much to take in at once.',
  'damaged-file': 'This file is not whole, or is not what its type says. Send it again, or save it anew.',
  'two-kinds-of-file':
    'Another kind of file is hidden in this one, so it is not kept. Save the picture anew and send that.',
} as const

/** The question itself, where the field decides what is asked. Keys end a path. */
export const EN_QUESTIONS = {
  'depth.to': 'What are these depths measured to?',
  depthTo: 'What is the depth of this line measured to?',
  'compressor.pressure': 'No piercing tool runs on so little. Is it gauge, and really that low?',
} as const

export const EN_ISSUE_PARTS = {
  accepted: 'Accepted: {list:text}.',
  needed: 'Needed: {list:text}.',
  didYouMean: 'Did you mean {list:text}?',
  answers: 'Answer with {list:text}.',
  between: 'It must lie between {min:text} and {max:text}.',
  atLeast: 'It must be at least {min:text}.',
  atMost: 'It must be at most {max:text}.',
  or: 'or',
} as const
