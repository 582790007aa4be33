/** Words of the controls themselves. */
export const FIELD_WORDS = {
  notSaid: 'not said',
  yes: 'yes',
  no: 'no',
  remove: (what: string) => `Remove ${what}`,
  reads: (reads: string, not: string | null) =>
    not === null ? `reads as ${reads}` : `reads as ${reads}, not ${not}`,
}
