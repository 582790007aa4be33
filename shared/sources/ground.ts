import type { Source } from './shape.ts'

export const groundSources = {
} as const satisfies Record<string, Source>
