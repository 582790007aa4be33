/** What is asked about lines and said of them, in the words of a crew in the United States. */
export const EN_LINE_WORDS = {
  privateLine: {
    lateral: 'sewer lateral',
    septic: 'septic tank or its pipes',
    propane: 'propane line',
    lighting: 'yard lights',
    irrigation: 'sprinklers',
    pool: 'pool lines',
    well: 'well and its line',
    'outbuilding-power': 'power to a shed or garage',
    'dog-fence': 'dog fence',
    drains: 'yard drains',
  },
  privateAnswer: { no: 'none', away: 'yes, located, stays away', yes: 'yes', unknown: 'don’t know' },
  ownerAnswer: {
    marked: 'marked',
    clear: 'cleared: nothing of ours here',
    unmarked: 'not marked, with a reason',
    'not-present': 'not in the area',
    exposed: 'exposed by the owner',
    'met-on-site': 'met on site',
  },
  foundOnGround: {
    fits: 'as answered',
    nothing: 'nothing on the ground',
    differs: 'something else on the ground',
  },
  qualityScheme: { 'asce-38': 'ASCE 38 (US)', 'pas-128': 'PAS 128 (UK)', 'as-5488': 'AS 5488 (Australia)' },
} as const
