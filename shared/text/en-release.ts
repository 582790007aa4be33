/** Why a plan is held or to be checked, and the way out of each. {name:kind} takes a value. */
export const EN_RELEASE = {
  'lines-not-asked':
    'Nobody has said what lies in the ground here. List every line crossed; if there are none, record who was asked and on what day.',
  'none-here-not-signed':
    'The list of lines is empty and nobody has put a name to it. Record who was asked and on what day.',
  'locate-not-asked': 'No locate on record. Call the one-call center, then enter the ticket and the answers.',
  'jurisdiction-not-given':
    'Nobody has said which state’s or country’s locate rules apply. Choose the place with the ticket.',
  'jurisdiction-not-known':
    'No locate rules here for “{given:text}”. Choose the place from the list. If it is not there: read its law and the one-call center’s pages, put your name and the day to it, and go by the printed ticket alone.',
  'private-not-asked':
    'Private lines not asked about: one-call paints none of them. Ask the owner of the site by name for septic, propane, yard lights, sprinklers and the rest, and record who answered.',
  'private-not-known':
    'Private lines nobody could answer for: {private:privateLine}. Ask again, walk the route, or have them located; “don’t know” is no answer to dig on.',
  'private-not-signed': 'The answers about private lines have no name and day to them. Record who gave them.',
  'private-not-listed':
    'There is one here and it is not on the list of lines crossed: {private:privateLine}. List it with its station and expose it, or have it located and say that it stays away.',
  'exposed-without-record':
    'Line {line:whole}, {kind:utility}: said to be exposed, without who, when or a photo of the tape in the hole. Add them.',
  'ticket-before-call':
    'The ticket starts ({starts:text}) before it was called in ({called:text}). Copy both again off the printed ticket.',
  'owner-not-answered':
    '{owner:text}: no answer yet. Call them or the one-call center; nobody digs on silence.',
  'answer-not-on-ground':
    '{owner:text} answered “{answer:text}” and the ground says otherwise. Stop, take a photo, and call them back before anybody digs.',
  'no-ticket': 'No locate ticket entered. Copy its start and expiry off the printed ticket.',
  'no-owner-answered': 'No owner’s answer on record. Enter every owner’s reply; no reply is not a yes.',
  'owner-silent':
    '{owner:text}: no usable answer yet (“{answer:text}”). Call them or the one-call center; nobody digs on silence.',
  'line-not-exposed':
    'Line {line:whole}, {kind:utility}: not exposed. Open it by hand or vacuum where the bore crosses, and measure its depth and size. Paint carries no depth.',
  'line-not-exposed/sewer':
    'Line {line:whole}, {kind:utility}: not exposed. Open it where the bore crosses. Where the law allows and it is too deep to reach: manhole inverts and camera depth, with a name to it.',
  'line-not-exposed/storm':
    'Line {line:whole}, {kind:utility}: not exposed. Open it where the bore crosses. Where the law allows and it is too deep to reach: manhole inverts and camera depth, with a name to it.',
  'parallel-not-exposed':
    'Line {line:whole}, {kind:utility}: runs alongside and is not exposed. Open it at set spacing along the bore, and at the far end, where the tool may have drifted most.',
  'line-depth-not-known':
    'Line {line:whole}, {kind:utility}: no depth given. Measure it in the hole, and say if it is to the top, the center or the bottom.',
  'line-size-not-known': 'Line {line:whole}, {kind:utility}: no size given. Measure it in the hole.',
  'clearance-without-name':
    'Line {line:whole}, {kind:utility}: an owner’s clearance with nobody’s name to it. Enter who at the owner said so.',
  'proved-too-near':
    'Line {line:whole}, {kind:utility}: proved another way than by opening it, and only {gapM:tapeDown} from the bore. It takes {3 ft|0.9 m} and more. Open it, or go farther from it.',
  'clearance-short':
    'Line {line:whole}, {kind:utility}: {separationM:tapeDown} from the bore’s center to the line; it takes {requiredM:tapeUp}, so {shortM:tapeUp} is missing. Take the bore that much farther from it (deeper, where it passes under), launch from the nearer pit, or move the path.',
  'cover-too-small':
    'Under the {kind:surface} from {fromM:length} to {toM:length}: {coverM:tapeDown} of cover, {coverRatio:oneDecimal} bore diameters. Not enough: it wants {wantedM:tapeUp}. Go deeper or use a smaller tool; the permit’s figure replaces ours.',
  'cover-check':
    'Under the {kind:surface} from {fromM:length} to {toM:length}: {coverM:tapeDown} of cover, {coverRatio:oneDecimal} bore diameters. Thin: {wantedM:tapeUp} is usual. Take photos before, and watch the surface while the tool runs.',
  'ticket-dates':
    'The ticket expires ({expires:text}) before it starts ({starts:text}). Copy both again off the printed ticket.',
  'listed-owner-silent':
    'Line {line:whole}, {kind:utility}: no answer on record from {owner:text}. Enter it, or call them; no reply is not a yes.',
  'line-owner-not-given':
    'Line {line:whole}, {kind:utility}: nobody has said whose it is, so no answer can be held against it. Enter its owner, or say that it is private.',
  'marked-but-none-listed':
    '{owner:text} marked something here, and no line is listed. List what was marked, with its station, or ask the owner what the paint means.',
  'pit-needs-engineer':
    'A pit floor at {floorM:tape} is past {20 ft|6.1 m}: a registered engineer designs it. Bring the design, or make the bore shallower.',
  'launch-has-no-pit':
    'The tool is to start from a {end:end}, where there is no room to lie and aim it. Launch from a pit, or turn the bore around.',
  'over-rated-pressure':
    'The tool gets {toolGaugePa:gaugePressure} and is rated {ratedGaugePa:gaugePressure}. Regulate down: nothing runs above its rating.',
  'tool-rating-not-given':
    'The tool gets {toolGaugePa:gaugePressure}, more than most are made for, and nobody has given what it is rated. Regulate down, or enter the rated pressure off its plate.',
  'over-hose-rating':
    'The line can see {toolGaugePa:gaugePressure} and a hose is rated {ratedGaugePa:gaugePressure}. Regulate down at the machine or change the hose: nothing runs above its rating.',
  'grade-not-given':
    'This pipe is laid to a grade and none is given. Enter the fall it needs, like 1/4 in per ft.',
  'footing-not-known':
    'The bore ends at a wall and nobody has given the depth of its footing. Measure it or take it off the drawings, and enter it with the wall.',
  'bore-at-footing':
    'The bore meets the wall with its underside at {bottomM:tape}; the footing starts at {footingM:tape}. Aim above the footing, or go in another way with the building’s engineer.',
  'shot-beyond-unguided':
    'One shot of {lengthM:length} is too long for a tool that cannot be steered. Put a pit in the middle, or use a steered method.',
  'shot-long-for-body':
    'A shot of {lengthM:length} is long for this tool. Put a pit in the middle, use a larger body, or check the drift figures before you go.',
  'ground-outside-model':
    'Some of this ground is beyond what the formulas cover. Dig a test pit and say what you find, or use another method.',
  'pull-not-sane':
    'Getting the pipe in: “{method:pull}” does not suit: {why:pullWhy}. Pick another way, or change what stands in the way.',
  'pull-not-sane/none': 'Getting the pipe in: {why:pullWhy}. Change the tool, the hose or the pipe.',
  'coil-too-short':
    'The coil is {shortM:tapeUp} short with the tails at both ends. Load a longer coil; no joint inside the bore.',
  'fit-tight':
    'Tight: the bore is {ratio:twoDecimals} times the pipe across. The pipe may hang up; use a larger tool, or a smaller grip and coupling.',
  'gap-wide':
    'Loose: {radialGapM:movement} all around the pipe. It may settle, above all under pavement. Use a smaller tool, or fill the space.',
  'air-too-low':
    'Only {toolGaugePa:gaugePressure} at the tool: too little to work with. Larger hose, shorter line, fewer tools or a larger compressor.',
  'air-weak':
    '{toolGaugePa:gaugePressure} at the tool: weak, and slow going. A larger or shorter hose is the cheapest cure.',
  'unlikely-to-arrive':
    'More likely than not this bore does not arrive: chance {probability:chance}. Another method, a larger tool, or shorter shots.',
  'may-not-arrive':
    'It may not arrive on the first try: chance {probability:chance}. Have plan B and its price agreed before you start.',
  'start-again':
    'The first-{foot|meter} check found the tool {offM:length} off at {stationM:length}: more than 1 in 100. Pull it back and start again in fresh face.',
  'readings-disagree':
    'Bore {number:whole}: what was read of the tool does not fit together, or it strays more than tools do. Every doubt is taken {times:oneDecimal} times as wide. Look again; a tool seen in a hole beats an instrument.',
  'may-miss-window':
    'It may miss the receiving pit’s window: chance to hit {probability:chance}. Make the pit wider, shorten the shot, or take more care with the aim.',
  'grade-not-promised':
    'Grade cannot be promised with a tool that is not steered: chance to arrive within {1 in|25 mm} of grade {probability:chance}. Use a steered method or open cut, or bore larger and set the pipe to grade inside.',
} as const

export const EN_STATUS = {
  hold: 'Hold',
  check: 'Check',
} as const

export const EN_STATUS_MEANING = {
  hold: 'Do not bore. A rule is not met, or a fact is missing; the reasons say what to do.',
  check:
    'Nothing on paper holds it. What is below wants a look; the site list is still to be signed on site, today.',
} as const
