/** How the air was oiled while a bore was made, and what state it was in. */
export const OILING = ['good', 'poor', 'none'] as const
export type Oiling = (typeof OILING)[number]
export const AIR_STATES = ['dry', 'wet'] as const
export type AirState = (typeof AIR_STATES)[number]
