import type { Source } from './shape.ts'

export const airSources = {
} as const satisfies Record<string, Source>
