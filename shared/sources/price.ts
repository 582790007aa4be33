import type { Source } from './shape.ts'

export const priceSources = {} as const satisfies Record<string, Source>
