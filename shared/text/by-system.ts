import type { UnitSystem } from '../quantities/shown-units.ts'

/** `{4 ft|1.2 m}`: a fixed figure as each system prints it; the left one is US customary. */
export const bySystem = (template: string, system: UnitSystem): string =>
  template.replace(/\{([^{}|]*)\|([^{}|]*)\}/g, (_whole, us: string, si: string) =>
    system === 'us' ? us : si,
  )

/** First letter large: sentences may begin with a word the plan gives. */
export const asSentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** What stands for a code this version has no words for, such as one kept by a later version. */
export const plainCode = (code: string): string => code.replace(/[-_]/g, ' ')
