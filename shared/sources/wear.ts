import type { Source } from './shape.ts'

export const wearSources = {} as const satisfies Record<string, Source>
