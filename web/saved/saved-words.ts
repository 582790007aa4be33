import { spoken } from '../words/spoken-words.ts'

/** Words of the saved crossings: the list, the bar that saves, and what came of it. */
export const EN_SAVED = {
  heading: 'Saved crossings',
  intro: 'Drop crossing files anywhere here to bring them in.',
  fresh: 'New crossing',
  find: 'Find by name',
  sort: 'Sort by',
  byDate: 'last changed first',
  byName: 'name',
  list: 'Crossings',
  count: (shown: number, all: number) =>
    shown === all ? `${all} ${all === 1 ? 'crossing' : 'crossings'}` : `${shown} of ${all} crossings`,
  loading: 'The crossings are being fetched …',
  empty: 'Nothing is saved yet. Start a new crossing and save it, or drop crossing files here.',
  noneFound: (what: string) => `No saved crossing has “${what}” in its name.`,
  unreachable: 'There is no connection to the server. What this browser has kept is listed; it may be older.',
  unreachableNothing: 'There is no connection to the server, and this browser has kept nothing.',
  trouble: 'The server answered with an error, so there is no list. Nothing is lost by trying again.',
  again: 'Try again',
  demo: 'invented example',
  noPlan: 'no plan',
  notWorkedOut: 'not worked out',
  notSent: 'not sent yet',
  length: 'Length',
  noLength: 'length not given',
  changed: (when: string) => `changed ${when}`,
  kept: (when: string) => `kept here ${when}`,
  duplicate: 'Duplicate',
  export: 'As a file',
  exportWhole: 'Save as a file',
  delete: 'Delete',
  ofRow: (action: string, name: string) => `${action}: ${name}`,
  copyOf: (name: string) => `${name} (copy)`,
  duplicated: (name: string) => `Saved as “${name}”.`,
  deleted: (name: string) => `Deleted “${name}”.`,
  deletedLater: (name: string) =>
    `“${name}” is taken away here; the server is told when the connection is back.`,
  undo: 'Undo',
  undoWhich: (name: string) => `Undo: bring back ${name}`,
  restored: (name: string) => `“${name}” is back.`,
  notDone: {
    unreachable: (name: string) => `“${name}”: there is no connection, so nothing was changed.`,
    conflict: (name: string) => `“${name}” has been changed meanwhile. Look at it first, then try again.`,
    absent: (name: string) => `“${name}” is not there any more.`,
    refused: (name: string) => `“${name}” was refused: open it to see what is missing.`,
    trouble: (name: string) => `“${name}”: the server answered with an error. Try again.`,
  },
  waitingToGo: (name: string) => `“${name}” is kept in this browser and is sent when the connection is back.`,
  exportAll: (count: number) => (count === 1 ? 'Save it as a file' : `Save these ${count} as one file`),
  chooseFiles: 'Bring in files',
  allName: 'crossings.json',
}
export const SAVED = spoken('saved', EN_SAVED)

export const EN_SAVE_BAR = {
  region: 'Saving',
  oneHeading: 'Saved crossing',
  again: 'Try again',
  save: 'Save',
  neverSaved: 'Not saved yet.',
  changed: (version: number) => `Changed since version ${version}.`,
  saving: 'Saving …',
  saved: (version: number) => `Saved at version ${version}.`,
  waiting: 'Waiting for a connection. It is kept in this browser and is sent when the connection is back.',
  waitingUnkept:
    'Waiting for a connection, and this browser keeps nothing: leave this page open, or save it as a file.',
  refused: 'Not saved. What stands in the form cannot be kept yet:',
  trouble: 'Not saved: the server answered with an error. What you typed is kept in this browser. Try again.',
  elsewhere: 'Not saved: it was changed elsewhere.',
  deleted: 'Not saved: it was deleted elsewhere.',
  gone: 'Not saved: it was deleted elsewhere, too long ago to bring back.',
  saveAsNew: 'Save as a new crossing',
  back: 'Back to what is saved',
  fileOf: 'Save as a file',
  all: 'All saved crossings',
  loading: 'The crossing is being fetched …',
  absent: 'There is no such crossing here, or it was deleted.',
  unreachable: 'There is no connection to the server, and this browser has not kept this crossing.',
  loadTrouble: 'The server answered with an error. Try again.',
  offlineCopy: 'There is no connection: this is the copy this browser has kept.',
  left: (when: string) =>
    `There are changes of this crossing that were not saved: typed ${when} in another tab, or before the browser was closed.`,
  takeLeft: 'Open them here',
  throwLeft: 'Throw them away',
}
export const SAVE_BAR = spoken('saveBar', EN_SAVE_BAR)

export const EN_MERGE = {
  heading: 'Two versions of this crossing',
  intro: (version: number, when: string) =>
    `Version ${version} was saved ${when}, while you were working on an older one. Nothing is lost: choose what holds where both changed it, then save.`,
  mine: 'Mine',
  theirs: 'Theirs',
  both: 'Changed by both',
  takenTheirs: 'Changed only there: taken over',
  keptMine: 'Changed only here: kept',
  leftOut: 'left out',
  save: (version: number) => `Save on top of version ${version}`,
  takeTheirs: 'Take theirs, let mine go',
  same: 'Both versions say the same.',
  deletedHeading: 'This crossing was deleted elsewhere',
  deletedIntro: 'What you have here is kept. Bring the crossing back with it, or save it as a new one.',
  bringBack: 'Bring it back and save mine',
}
export const MERGE = spoken('merge', EN_MERGE)

export const EN_STORED = {
  heading: 'Saved figures and today’s',
  same: (engine: string, now: string) =>
    `Saved with numbers ${engine}; today’s are ${now}. The figures below came out the same.`,
  caption: (engine: string, now: string) => `As saved with numbers ${engine}, and worked out now with ${now}`,
  sentence: (engine: string, saved: string, now: string) =>
    `Saved with engine ${engine}: ${saved} of hammering; now ${now}.`,
  otherwise: (engine: string) => `Saved with engine ${engine}: some figures are others now.`,
  kept: 'The saved figures stay as they were made until you save again.',
  noResult: (engine: string) => `Saved with engine ${engine} without a plan; now there is one.`,
  noneNow: (engine: string) => `Saved with engine ${engine} with a plan; now it cannot be planned.`,
  again: 'Save again with today’s figures',
  columns: ['figure', 'as saved', 'now'],
  figures: {
    status: 'Release',
    hammer: 'Hammering, likely',
    crossing: 'Whole crossing, likely',
    arrives: 'Arrives',
    pressure: 'Pressure at the tool',
    cover: 'Least cover',
    quoted: 'To quote',
  },
}
export const STORED = spoken('stored', EN_STORED)

export const EN_FILES = {
  region: 'Files brought in',
  drop: 'Let go to bring the files in',
  notJson: 'This file is not JSON, so it is no crossing file.',
  notObject: 'This holds no crossing: a crossing file is one JSON object, or a list of them.',
  empty: 'This file is empty.',
  otherSchema: (schema: string) => `This is “${schema}”, not a crossing file (underlane/crossing@1).`,
  tooLarge: 'This file is too large to be crossing files.',
  tooMany: (most: number) => `This file holds more than ${most} crossings: split it.`,
  among: (file: string, place: number) => `${file}, crossing ${place}`,
  moreIssues: (count: number) => `and ${count} more`,
  openToMend: 'Open it to mend it',
  saving: (done: number, all: number) => `Saving ${done} of ${all} …`,
  saved: (count: number) => (count === 1 ? 'One crossing was saved.' : `${count} crossings were saved.`),
  waiting: (count: number) => `${count} wait in this browser for a connection.`,
  bad: (count: number) =>
    count === 1 ? 'One could not be brought in:' : `${count} could not be brought in:`,
  close: 'Close',
  toList: 'To the saved crossings',
}
export const FILES = spoken('files', EN_FILES)
