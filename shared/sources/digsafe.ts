import type { Source } from './shape.ts'

export const digsafeSources = {
} as const satisfies Record<string, Source>
