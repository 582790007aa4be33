/** The path of the tool: where it was seen, what gives room, what to open up. {name:kind} takes a value. */
export const EN_PATH = {
  'propose/other-end': 'Bore {shot:whole}: launch from the other pit.',
  'propose/deeper': 'Bore {shot:whole}: {moveM:tapeUp} deeper, end to end.',
  'propose/shallower':
    'Bore {shot:whole}: {moveM:tapeUp} shallower, end to end. Look at the cover that leaves.',
  'propose/extra-pit': 'Bore {shot:whole}: one more pit at {stationM:length}.',
  'propose/enough': 'Then no line of known depth is short; now the worst is short by {shortM:tapeUp}.',
  'propose/left': 'Then the worst is still short by {shortAfterM:tapeUp}; now by {shortM:tapeUp}.',
  'expose/unknown':
    'Line {line:whole}, {kind:utility} at {atM:length}: depth not known. Nobody can say if there is room.',
  'expose/short':
    'Line {line:whole}, {kind:utility} at {atM:length}: short by {shortM:tapeUp} as told. Measured in a hole it needs {savesM:tapeDown} less.',
  'expose/room':
    'Line {line:whole}, {kind:utility} at {atM:length}: has its room as told, and nobody has measured it.',
  'expose/more': 'It runs alongside: open it there too: {list:text}.',
  'drift/launch': 'Drift counted from the launch at {stationM:length}.',
  'drift/hole': 'Drift counted from the hole at {stationM:length}, where the tool is watched past.',
  'drift/seen': 'Drift counted from where the tool was last found: {by:lookedBy} at {stationM:length}.',
} as const
