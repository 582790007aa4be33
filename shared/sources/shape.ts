/** How far a value may be trusted; the five words a user sees. */
export type Standing = 'published' | 'second hand' | 'common practice' | 'our judgement' | 'your value'

export type Source = {
  /** Full citation as a reader would look it up. */
  readonly citation: string
  readonly standing: Standing
  /** What we use of it, and how we came by it (read; read in a copy; from memory). */
  readonly use: string
}
