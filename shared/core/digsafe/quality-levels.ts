/** Whose classes of evidence: United States, United Kingdom, Australia. */
export const QUALITY_SCHEMES = ['asce-38', 'pas-128', 'as-5488'] as const
export type QualityScheme = (typeof QUALITY_SCHEMES)[number]
export const QUALITY_LEVELS = ['A', 'B', 'B1', 'B2', 'B3', 'B4', 'C', 'D'] as const
export type QualityLevel = (typeof QUALITY_LEVELS)[number]

/** What each scheme knows; PAS 128 has its B in four. */
export const LEVELS_OF: Readonly<Record<QualityScheme, readonly QualityLevel[]>> = {
  'asce-38': ['A', 'B', 'C', 'D'],
  'pas-128': ['A', 'B1', 'B2', 'B3', 'B4', 'C', 'D'],
  'as-5488': ['A', 'B', 'C', 'D'],
}
