/** What can hurt somebody or spoil the bore. Where rules differ by place or owner, the sentence sends the reader there. */
export const EN_CAUTIONS = {
  'plan-does-not-permit':
    'This plan is not permission to dig. The law where you are, the printed ticket, each line’s owner and the competent person on site decide.',
  'unlisted-lines':
    'This plan knows only the lines you listed and says nothing about any other. Walk the route for meters, covers, patched cuts and lamp posts, and ask about private lines.',
  'keep-exit-pit-empty':
    'Nobody in the receiving pit until the air is off and bled. In reverse, nobody in the launch pit either.',
  'air-off-and-bled':
    'Air off and bled, proved at zero, before a hand touches the tool, a coupling or the oiler.',
  'hear-and-see':
    'Ear and eye protection on while the tool runs. Take a meter reading at the operator’s ear; noise rules go by what it shows. OSHA allows 8 h a day at 90 dB(A), 4 h at 95 dB(A), 2 h at 100 dB(A), 1 h at 105 dB(A); NIOSH advises 8 h at 85 dB(A), half of it for every 3 dB(A) more.',
  'pit-can-bury':
    'A pit {floorM:depth} deep can bury a person. Slope, shore or shield it; the competent person looks at it today and after rain, before anyone goes in.',
  'gas-struck':
    'Gas hit, nicked or smelled: everyone out on foot, upwind. Leave it. Do not go back to switch anything on or off near the gas. No valves, no backfill, no pulling the tool. From {330 ft|100 m} or more call 911, then the gas owner. Warn the neighbors, with or without gas service. Follow the owner’s and the local rules.',
  'power-struck':
    'Power hit: treat tool, hose, pipe, pit water and compressor as live. Touch nothing, and do not step into or out of the pit. Keep the others well back, call 911 and the power owner, and wait until the owner says it is dead. A quiet cable is not a dead one.',
  'line-overhead':
    'Line overhead: excavator, boom and pipe stay {overheadM:depth} away, more if its owner says so. Ask the voltage; somebody watches while plant moves.',
  'stop-short-of-wall':
    'Stop the tool {stopShortM:tape} short of the wall and come through from inside. Never hammer on the wall or the footing.',
  'work-inside':
    'Working inside: exhaust out of the building, fresh air in, and somebody within call. Cover what the oil mist must not reach.',
  'regulate-down':
    'The compressor rides up to {unloadedGaugePa:gaugePressure} with no air drawn; the tool runs at {toolGaugePa:gaugePressure}. Regulate down, and go by the lowest rating on the line.',
  icing:
    'At {temperatureK:temperature} the exhaust can ice up. Winter oil, a drained water separator, and look at the hose for ice before blaming the tool.',
  'tool-starves':
    'The tool on “{branch:text}” gets only {toolGaugePa:gaugePressure} while the others hammer. Run one tool at a time, or give it a larger hose.',
  'engine-too-weak':
    'At {altitudeM:altitude} an engine without a turbo gives air for {capacityM3PerS:volumeFlow}; the tools want {demandM3PerS:volumeFlow}. Bring a turbocharged or a larger machine.',
  'engine-not-said':
    'At {altitudeM:altitude} an engine without a turbo loses more power than the thin air saves. Say which one this is.',
  'air-uncertain':
    'With a rough hose and tight couplings the tool could get as little as {toolGaugePa:gaugePressure}. Read a gauge at the tool before you count on the time.',
  'water-in-line':
    'About {waterKgPerS:massFlow} of water falls out on the way to the tool. Drain the tank, fit a separator, and blow the hose out before hooking up.',
  'hose-can-whip':
    'A {boreM:diameter} hose that parts pushes with {thrustN:force} at first and holds {energyJ:energy}. A cut-off device at the source (over {1/2 in|13 mm} it is required), a restraint on every joint, pins in.',
  'no-oiler':
    'No oiler on the line. A tool run dry wears out in days: fit one, or oil by hand at every stop with the air off and bled.',
  'compressor-too-small':
    'The tool wants {demandM3PerS:volumeFlow} and the compressor gives {capacityM3PerS:volumeFlow} here, so the pressure sags. Run one tool at a time, or bring a larger machine.',
  breakout:
    'The ground may break open over the bore at {atM:length}: only {coverRatio:oneDecimal} bore diameters of cover. Keep everyone off it while the tool runs.',
  heave: 'On a bad day the surface lifts {heaveM:movement}. Take levels and photos before, during and after.',
  'hole-may-close':
    'The hole may close behind the tool. Have the pipe there before you start, and tow it or pull it at once.',
  'poor-grip':
    'Soft or loose ground may not grip the tool: it hammers and stays where it is. A helper keeps a steady pull on the hose at the start; never hoist by it.',
  'below-water':
    'The bore is below groundwater. Keep a pump going, nobody in a filling pit, and expect the pit sides to slough.',
  'layers-deflect':
    'Where one soil meets another the tool may turn. Watch it through the holes, and check the line at the pit.',
  'may-stall':
    'The tool may stall: chance {probability:chance}. No movement for 2 min: stop and look at air, oil and hose. Same place twice: decide, do not keep hammering.',
  'rate-not-validated':
    'The advance rate is worked out from published soil mechanics and our judgment, and has not been checked against your bores. Time your own hose marks.',
  'void-around-pipe':
    'A space stays around the pipe: {radialGapM:movement} all around, {annulusM3PerM:perLength} to fill. Under pavement, fill it or ask the road’s owner.',
  'grade-other-ways':
    'This line has to fall {grade:grade}. A tool that is not steered cannot be held to grade: think of a steered method, open cut, or a larger bore with the pipe set inside. The bell has to pass, not only the pipe.',
  'towed-no-reverse': 'With the pipe in tow the tool cannot be backed out. If it stalls, you dig.',
  'prove-reverse-first':
    'Back the tool a foot and forward again in the launch pit before you count on reverse.',
  'weak-link':
    'Gas plastic: pull with a weak link set below the pipe’s limit, look at the end that comes out, and let it rest overnight before tying in.',
  'below-call-out':
    'The price comes out below your minimum call-out of {minorUnits:money}. Charge the minimum, or put it with other work.',
} as const
