import type { Source } from './shape.ts'

export const lineSources = {
} as const satisfies Record<string, Source>
