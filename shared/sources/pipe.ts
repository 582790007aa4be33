import type { Source } from './shape.ts'

export const pipeSources = {
} as const satisfies Record<string, Source>
