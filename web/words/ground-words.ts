import { spoken } from './spoken-words.ts'

/** The ground panel below the answers. */
export const EN_GROUND_PANEL = {
  heading: 'How sure the ground is',
  single: 'one piece of evidence',
  agree: 'what was said agrees',
  disagree: 'what was said does not agree',
  working: 'Working it out',
  tools: 'Which of my tools',
  ask: 'Rank the tools of the shop for this bore',
  asking: 'Asking the shop',
  past: 'Past bores',
  pastNone: 'none entered',
  pastSome: (count: number) => (count === 1 ? '1 entered' : `${count} entered`),
  pastHint:
    'Bores you made in this kind of ground with this tool. Between two hose marks: how far, and how long it hammered. Those that stalled belong in, or it learns from luck alone.',
  bore: 'Past bore',
  addBore: 'Add a past bore',
  family: 'Ground',
  length: 'Hose from mark to mark',
  time: 'Hammering between them',
  pressure: 'Pressure at the tool',
  pressureHint: 'if left out: the pressure the tool is rated at',
  stalled: 'It stalled',
  excluded: 'Leave it out',
  note: 'Where, when, who',
  noTools: 'The shop has no tools, or cannot be reached.',
}
export const GROUND_PANEL = spoken('groundPanel', EN_GROUND_PANEL)
