import { spoken } from './spoken-words.ts'

/** Labels around every page. */
export const EN_SHELL = {
  name: 'Underlane',
  promise: 'plans bores made with piercing tools',
  crossing: 'Crossing',
  saved: 'Saved',
  shop: 'Shop',
  workings: 'Workings',
  places: 'Places',
  units: 'Units',
  language: 'Language',
  english: 'English',
  spanish: 'Español',
  languageMissing: 'Spanish has not been fetched yet, and there is no signal.',
  theme: 'Screen',
  themes: { system: 'as the device', light: 'light', dark: 'dark', sun: 'in the sun' },
  settings: 'Units, language, screen',
  us: 'US',
  si: 'SI',
  struck: 'Line hit · stuck',
  signIn: 'Sign in',
  mine: 'My access',
  notFound: 'There is no page at this address.',
  caution:
    'Underlane plans; it does not permit. Local law, the one-call {center|centre}, the owners of other lines, the competent person on site and licensed engineers decide.',
  engine: 'numbers',
  loading: 'One moment …',
}

export const SHELL = spoken('shell', EN_SHELL)
