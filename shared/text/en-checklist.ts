/** What is looked at before the air is opened; each a thing somebody can put a name to. */
export const EN_CHECKLIST = {
  'ticket-on-sheet':
    'Ticket number, start, expiry and renew-by date are on the job sheet, copied off the printed ticket.',
  'owners-answered': 'Every owner on the ticket has answered, and the answers fit the paint on the ground.',
  'white-line-whole-path':
    'White line shows both pits, the path, the strip the tool may drift in, and some run-on.',
  'non-members-asked':
    'Owners outside the one-call system asked: town water and sewer, rail, the owner of the site.',
  'trenchless-said':
    'Ticket says trenchless, with a piercing tool, so that owners of unmarked sewers answer too.',
  'route-walked': 'Route walked: meters, pedestals, covers, patched cuts, lamp posts, cleanouts, tanks.',
  'private-lines-asked':
    'Property owner asked about private lines, and they are located: lateral, septic, propane, lighting, sprinklers, pool, dog fence.',
  'crossings-exposed':
    'Every line crossed is exposed; depth, what it was measured to, and size are on the plan.',
  'watchers-and-stop-signal':
    'A watcher at each open hole and a stop signal agreed. The tool is seen passing, or it stops. Watch from the first foot.',
  'clearance-with-measured-depths':
    'Gap worked out again with the measured depths. Short: move, go deeper or open cut.',
  'photos-of-marks':
    'Photos of every color of paint before digging, and of each exposed line with a tape in it.',
  'emergency-card': 'Emergency card out: address, owners’ numbers, upwind meeting point, who calls.',
  'competent-person-today': 'Competent person named, and the pits signed off today.',
  'gas-hand-exposed':
    'Gas opened by hand or vacuum before any power tool works near it. Owner asked if they want their own person here.',
  'gas-compressor-upwind':
    'Compressor upwind with a shut-off there, gas tester on, no smoking, two ways out of the pit.',
  'gas-engines-asked':
    'Gas owner asked what is done with engines if gas escapes; the crew knows it. Nobody goes back into gas to reach a switch.',
  'gas-separation':
    'New pipe keeps at least {12 in|300 mm} from the gas line, or the owner’s figure if more.',
  'power-owner-asked':
    'Power owner asked: voltage, in duct or direct buried, can it be switched off. Opened by hand with insulated tools.',
  'power-crew-briefed':
    'Crew told: tool, hose and pipe may go live; nobody touches the hose while the tool passes the cable.',
  'plant-off-overhead': 'Plant stays {10 ft|3 m} from lines overhead, more by voltage; somebody watches it.',
  'fibre-hand-exposed': 'Telecom opened by hand; owner told if it is a trunk or carries 911.',
  'sewer-and-laterals-found':
    'Sewer and every lateral found by camera or exposed; depth of the flow line written down.',
  'water-sewer-apart':
    'Water and sewer {10 ft|3 m} apart side by side, or {18 in|450 mm} up and down where they cross; or the authority’s waiver is here.',
  'cross-bore-looked-at':
    'After the bore: sewers and laterals looked at by camera, by a named person, before gas or service goes on. Booked is not looked at.',
  'sewer-proved-another-way':
    'Sewer not opened up is proved another way where the law allows: manhole inverts and camera depth, {3 ft|0.9 m} and more between, with a name to it.',
  'parallel-exposed':
    'Line alongside exposed at set spacing, and the drift toward it checked at the far end.',
  ladder: 'Ladder within {25 ft|7.5 m} of everyone in the pit, {3 ft|0.9 m} above the edge.',
  'air-tested':
    'Air in the pit tested where it could be bad: oxygen 19.5 % or more, gas under 20 % of its lower limit. Rescue gear at hand.',
  'slope-shore-shield':
    'Pit sloped, shored or shielded for its soil; type C unless the competent person says better. Spoil {2 ft|0.6 m} back.',
  'pit-edge-guarded': 'Pit {6 ft|1.8 m} or deeper is guarded or covered at its edge.',
  'pit-engineer': 'Pit over {20 ft|6.1 m}: an engineer’s design is on site.',
  'paved-pits-boxed': 'Pits in pavement are shored or boxed, not laid back; plates or a cover for the night.',
  'traffic-plan': 'Traffic plan in place: signs, barriers, bright vests.',
  'permit-on-site': 'Road permit on site; its cover, hours and restoration read out to the crew.',
  'levels-before-during-after':
    'Levels shot on the pavement before, during and after. Stop at the permit’s limit.',
  'hose-cut-off':
    'Automatic cut-off at the source or branch for hose over {1/2 in|13 mm} inside; tried today.',
  'whip-restraints':
    'Whip check on every joint, pins in, and the lowest rating on the line is above the set pressure.',
  'hose-tape-zero':
    'Everybody knows where the tape on the hose starts: at the nose by rule; from the tail, tool and coupling come on top.',
  'bleed-before-opening': 'Shut, bleed and prove zero before any coupling is opened.',
  'oil-and-tilt-test':
    'Oiler filled, oil film on the glove at the exhaust; tilt test done: the striker slides free.',
  'reverse-proved': 'Reverse proved in the launch pit, before anybody counts on it.',
  'antifreeze-oil': 'Winter oil in, water separator drained, exhaust and hose checked for ice.',
  'marks-in-snow': 'Marks shot again in snow, in black or offset to something that stays.',
  'frost-not-shoring': 'Frozen ground is not taken for shoring.',
  'seepage-type-c': 'Water in the pit: treat as type C, pump watched, nobody in a filling pit.',
  'silica-when-cutting': 'Pavement cut wet or with a shroud and vacuum; masks as the silica rule says.',
  'noise-at-the-ear': 'Meter reading at the operator’s ear written down; protectors on when over.',
  'exit-pit-empty-until-bled':
    'Receiving pit empty until the air is off and bled. In reverse, the launch pit too.',
  'ground-bridge':
    'Before a metal water service is cut: test whether the building’s electrical ground uses it, and bridge it.',
  'wall-from-inside': 'Tool stops short of the wall; the wall is cored from inside, above the footing.',
  'weak-link': 'Weak link fitted on gas plastic, set below the pipe’s limit.',
} as const
