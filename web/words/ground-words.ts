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
  noTools: 'The shop has no tools, or cannot be reached.',
}
export const GROUND_PANEL = spoken('groundPanel', EN_GROUND_PANEL)
