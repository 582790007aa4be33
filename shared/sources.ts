import { airSources } from './sources/air.ts'
import { digsafeSources } from './sources/digsafe.ts'
import { groundSources } from './sources/ground.ts'
import { lineSources } from './sources/line.ts'
import { pipeSources } from './sources/pipe.ts'
import { practiceSources } from './sources/practice.ts'
import { priceSources } from './sources/price.ts'
import type { Source } from './sources/shape.ts'
import { wearSources } from './sources/wear.ts'

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
