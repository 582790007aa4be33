import { spoken } from './spoken-words.ts'

/** The field guide: tests of the hand, signs in the order of what they stand for. */
export const EN_GUIDE = {
  summary: 'Field guide: what your hand tells you',
  why: 'Of fresh, moist ground from the depth of the bore. It tells the kind and how hard, no more: a measurement goes before it, and no hand test makes a pit safe to enter.',
  use: 'use:',
  thumb: {
    heading: 'Thumb',
    how: 'Press your thumb into a fresh lump.',
    standing: 'Sets how hard. Terzaghi & Peck’s words.',
    signs: [
      'Squeezes out between the fingers',
      'Thumb sinks in with little effort; molds easily',
      'Thumb sinks in with some effort',
      'Thumb only dents it, with great effort',
      'Only the thumbnail dents it',
      'The thumbnail hardly marks it',
    ],
  },
  ribbon: {
    heading: 'Ribbon',
    how: 'Wet it to putty and push a ribbon out over your finger until it breaks.',
    standing: 'Sets the kind. Lengths from memory, as soil surveyors use them; it says nothing of strength.',
    signs: [
      'Longer than {2 in|50 mm} before it breaks',
      '{1 to 2 in|25 to 50 mm}',
      'Shorter than {1 in|25 mm}, gritty',
    ],
  },
  dry: {
    heading: 'Dry lump',
    how: 'Let a lump dry, then try to break it.',
    standing: 'Sets the kind. OSHA’s appendix: what crumbles to grains by itself is granular.',
    signs: [
      'Falls apart into grains by itself',
      'Powders between the fingers',
      'Breaks only with effort, or not at all',
    ],
  },
}
export const GUIDE = spoken('guide', EN_GUIDE)
