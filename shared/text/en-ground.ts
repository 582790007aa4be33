/** The ground as it was said, what matters most, and which tool. */
export const EN_GROUND = {
  'evidence/undrained-strength': 'measured shear strength',
  'evidence/vane': 'shear vane',
  'evidence/relative-density': 'relative density',
  'evidence/friction-angle': 'friction angle',
  'evidence/pocket-penetrometer': 'pocket penetrometer',
  'evidence/dcp': 'hand cone',
  'evidence/spt': 'blow count',
  'evidence/consistency': 'consistency, in words',
  'evidence/digging': 'how the pit dug',
  'evidence/word': 'the word for it',
  'evidence/group': 'the soil group alone',
  'agreement/used': 'planned by this',
  'agreement/agrees': 'agrees',
  'agreement/harder': 'says harder',
  'agreement/softer': 'says softer',
  ground: 'Ground {number:whole}: {soil:text}',
  disputed:
    'What was said of it does not agree. The plan goes by the most direct; look again before you price.',
  'as-blows': '{n:whole} blows',
  'correction/overburden':
    'A raw blow count of {fromN:whole} at this depth would be {toN:whole} (N1,60, factor {factor:twoDecimals}). The plan takes the count as it is given: correct it yourself if it is raw.',
  'correction/fine-sand':
    'Under water a count of {fromN:whole} in fine sand stands for {toN:whole}. The plan takes the count as it is given.',
  'matter/model':
    'how this ground takes to this kind of tool: time the first {6 to 10 ft|2 to 3 m}, or enter past bores',
  'matter/strength': 'how hard the ground is: a hand cone, a vane or a count settles it',
  'matter/rate': 'how much harder it is to drive fast than slowly',
  'matter/shaft': 'friction along the tool',
  'matter/energy': 'what a blow of this tool gives: its data sheet',
  'matter/efficiency': 'what of the blow reaches the ground',
  'matter/rigidity': 'how stiff the ground is for its strength',
  'matter/quake': 'how far the ground springs back',
  'matter/frictionAngle': 'the friction angle',
  'takes/half': 'halves it',
  'takes/most': 'takes away most of it: {share:chance}',
  'takes/some': 'takes away {share:chance} of it',
  'no-matters': 'Too many bores stall to say what matters most.',
  error:
    'Another set of draws would move the bad day by about {errorS:duration}: take more draws before you quote.',
  'not-validated':
    'The rate model is plausible, not validated: no published rates of this kind of tool by soil could be read. Your own timed bores are what makes it yours.',
  shorter:
    'Lands in its window {hitNow:chance} of the time. With a pit at {pits:text} no shot is longer than {longestM:length}, and it lands there {hitProbability:chance} of the time.',
  'family/clay': 'clay',
  'family/frictional': 'silt, clayey and silty ground',
  'family/sand': 'clean sand and gravel',
  'learned/bores':
    'Past bores in {family:text}: {bores:whole} counted, {stalled:whole} of them stalled, {excluded:whole} left out. They say {multiplier:twoDecimals} times the model’s rate, eight in ten between {multiplierP10:twoDecimals} and {multiplierP90:twoDecimals}. The plan has it in.',
  'learned/file':
    'Your own figure for {family:text}, from {bores:whole} bores{scope:text}: {multiplier:twoDecimals} times the model’s rate, eight in ten between {multiplierP10:twoDecimals} and {multiplierP90:twoDecimals}. The plan has it in.',
  'tool/none': 'nothing against it',
  'tool/check': 'look at',
  'tool/hold': 'a rule is against it',
  'tool/no': 'not for this bore',
  'tool/withdrawn': 'Out of use: {why:text}.',
} as const
