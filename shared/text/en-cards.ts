import type { Card, CardId } from './card-words.ts'

export const EN_CARDS: Readonly<Record<CardId, Card>> = {
  gas: {
    title: 'Gas hit, nicked or smelled',
    now: [
      'Shout stop. Everyone out of both pits and every hole, on foot, upwind.',
      'Let go of the controls. Leave it. Do not go back to switch anything on or off near the gas. Start nothing, light nothing, no phone near it.',
      'From clean air, {330 ft|100 m} away or more, all around: call {emergency}, then the gas owner.',
    ],
    after: [
      'Warn the buildings around, those without gas service too. Gas follows the bore and the ground: say where the bore runs.',
      'Keep people, cars and flames out.',
      'Let it vent. Let a fire burn. A line of high pressure that burns needs more room than {330 ft|100 m}: ask the owner.',
      'Count the crew. Nobody goes back until the gas owner says so.',
      'Tell the one-call center and your employer. Write down time, place and depth.',
    ],
    never: [
      'Turn a valve, plug, clamp or crimp.',
      'Backfill or cover the hole.',
      'Go back for tools, or to a switch in the gas.',
      'Pull the tool out or reverse it.',
      'Treat a scrape or a dent as nothing: the owner is told of every one.',
    ],
    note: 'Engines: published advice does not agree on whether to shut them off. All of it agrees: start nothing, and do not go into gas to reach a switch. Somebody already upwind at the compressor may stop the air if the gas owner’s rule allows it.',
  },
  electric: {
    title: 'Power cable hit',
    now: [
      'Take the tool, hose, pipe, pit water and compressor frame to be live.',
      'Touch nothing. On a machine: stay on it unless it burns.',
      'If you must move: feet together, shuffle or hop away. Never touch machine and ground at once.',
    ],
    after: [
      'Keep everyone else well back: the owner’s distance, {35 ft|11 m} where you do not know it.',
      'Call {emergency} and the power owner.',
      'Wait until the owner says it is dead and grounded.',
    ],
    never: [
      'Step into or out of the pit while connected to the hose.',
      'Uncouple the hose, or pull on it.',
      'Take a quiet cable for a dead one: it may be switched on again.',
      'Touch somebody who was hit before the power is proved off.',
    ],
  },
  water: {
    title: 'Water main or service hit',
    now: [
      'Stop the air. Everyone out: pits fill and their sides give way.',
      'Keep away from the jet, and from any power gear that is wet.',
    ],
    after: [
      'Call the water owner; {emergency} if a road or a building is at risk.',
      'Watch for ground washed out under the pavement, and for power lines laid bare.',
      'The pit has failed: the competent person looks at it again before anyone goes in.',
    ],
    never: ['Turn valves in the street yourself.', 'Work on in a pit that fills.', 'Lay over a nick.'],
  },
  sewer: {
    title: 'Sewer or drain hit',
    now: ['Stop. Out of the pit at sewage or a gas smell: it burns, it poisons, and it leaves no air.'],
    after: [
      'Call the sewer owner and the owner of the building.',
      'Test the air before anyone goes back in.',
      'Wash, see to cuts, disinfect the gear.',
      'Camera the run. Take it for a cross bore until somebody has seen that it is none.',
      'If the new pipe is gas, or will be: stop the job, and warn that no drain is to be cut or rodded here.',
    ],
    never: [
      'Pull the pipe in and leave it.',
      'Tell no one because it still drains.',
      'Let a drain cleaner cut it.',
    ],
  },
  telecom: {
    title: 'Telecom or fiber hit',
    now: [
      'Stop. Keep your eyes away from cut fiber ends.',
      'Look for power in the same trench before you touch anything.',
    ],
    after: [
      'Call the owner at once: calls to {emergency} may run on it.',
      'Write down time and place. Leave the ends as you found them.',
    ],
    never: [
      'Look into the end of a fiber, lit or not.',
      'Splice it, or pull slack.',
      'Cut the loose end tidy.',
    ],
  },
  stuck: {
    title: 'Tool stuck: no movement for 2 min',
    now: [
      'Stop hammering in one place. Receiving pit empty; in reverse the launch pit too.',
      'Air: gauge at the compressor, valve fully open, no kink, no coupling that leaks.',
      'Oil: film on the glove at the exhaust? Ice at the exhaust or in the hose? Thaw it, winter oil, drain the water separator.',
      'A helper keeps a steady pull on the hose, by hand. Try forward again.',
      'Reverse a foot, then forward; twice. Not with the pipe in tow: there is no reverse.',
    ],
    after: [
      'Still stuck: reverse out, if it will.',
      'Same place twice: stop and decide. Find the nose (below), look at what lies over it, and open down to it by hand or vacuum; the ticket has to cover the new hole.',
      'Or bore again at least {1 ft|0.3 m} or 3 to 4 diameters away, whichever is more, with a new check of the lines.',
      'The hole left behind goes on the as-built, and is filled under pavement.',
    ],
    never: [
      'Hands on tool, coupling or oiler before the air is off and bled.',
      'Pull the tool by its hose with a machine, or hoist by it.',
      'Hammer on in one place.',
      'Dig down in the zone of another line with anything but hands or vacuum.',
    ],
  },
}

export const EN_CARD_PAGE = {
  heading: 'What has happened?',
  now: 'Now',
  after: 'Then',
  never: 'Never',
  others: 'Other cards',
  print: 'Print the cards',
  call: 'Call',
  notGiven: 'not entered',
  crossing: 'Crossing in hand',
  address: 'Address',
  meeting: 'Meet, upwind',
  caller: 'Calls for help',
  engines: 'Gas owner’s rule on engines',
  numbers: 'Numbers',
  noNumbers: 'No owner’s number has been entered for this crossing.',
  noCrossing: 'No crossing has been opened in this browser.',
  sources: 'After',
  caution:
    'Local law, the owner of the line, the fire service and your own firm’s rules go first. These cards work with no signal.',
  nose: 'Where the nose is',
  mark: 'Hose mark at the launch face',
  zero: 'Hose is taped from',
  fromNose: 'the nose of the tool',
  fromTail: 'the tail: tool and coupling come on top',
  tool: 'Tool and coupling, together',
  noseAt: (station: string) => `Nose at ${station} from launch.`,
  noseLeft: (left: string) => `${left} to go.`,
  noPlan: 'The crossing as entered cannot be planned: depth not worked out, drift as usual.',
  noseBeyond: 'That is beyond the receiving pit: read the mark again.',
  noseDepth: (depth: string) => `Center of the tool about ${depth} below ground there, if it held its line.`,
  noseCircle: (reach: string) =>
    `Left or right, high or low: within ${reach} in 9 cases of 10, counted from the launch. Open a hole that wide.`,
  toolNotKnown: 'Tool length is not entered: measure tool and coupling.',
}
