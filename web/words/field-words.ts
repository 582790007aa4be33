import { spoken } from './spoken-words.ts'

/** Words of the controls themselves. */
export const EN_FIELD_WORDS = {
  notSaid: 'not said',
  planKeeps: (what: string) => `The plan still has the pipe from before: ${what}`,
  yes: 'yes',
  no: 'no',
  remove: (what: string) => `Remove ${what}`,
  reads: (reads: string, not: string | null) =>
    not === null ? `reads as ${reads}` : `reads as ${reads}, not ${not}`,
}
export const FIELD_WORDS = spoken('fields', EN_FIELD_WORDS)
