import { airSources } from './sources/air.ts'
import { digsafeSources } from './sources/digsafe.ts'
import { groundSources } from './sources/ground.ts'
import { lineSources } from './sources/line.ts'
import { pipeSources } from './sources/pipe.ts'
import { priceSources } from './sources/price.ts'
import { wearSources } from './sources/wear.ts'
import type { Source } from './sources/shape.ts'

const practiceSources = {
  CommonPractice: {
    citation: 'Common practice of the trade; no published source',
    standing: 'common practice',
    use: 'defaults and rules of thumb, from memory; all of them can be edited',
  },
  OurJudgement: {
    citation: 'The judgement of the makers of Underlane',
    standing: 'our judgement',
    use: 'choices made where neither a publication nor common practice decides',
  },
  YourValue: {
    citation: 'A value you gave',
    standing: 'your value',
    use: 'whatever the crossing file or the form says',
  },
  ExactIdentity: {
    citation: 'An identity that follows from the definitions, worked by hand',
    standing: 'published',
    use: 'closed forms and arithmetic that need no measurement',
  },
} as const satisfies Record<string, Source>

/** Every citation by key, one field of work a file. */
export const SOURCES = {
  ...practiceSources,
  ...airSources,
  ...groundSources,
  ...lineSources,
  ...pipeSources,
  ...digsafeSources,
  ...wearSources,
  ...priceSources,
} as const satisfies Record<string, Source>

export type SourceKey = keyof typeof SOURCES
