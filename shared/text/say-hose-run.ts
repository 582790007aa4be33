import type { Say } from './language.ts'
import { saidQuantity } from './say-quantity.ts'

const FOOT_M = 0.3048
/** What a solved length differs by from a whole one it means. */
const GRACE = 1e-6

const unitM = (say: Say): number => (say.system === 'us' ? FOOT_M : 1)

/** How far a line or a site goes: two figures, rounded down. The hose's own roughness leaves no more of them sure. */
export function saidReach(metres: number, say: Say): string {
  const units = metres / unitM(say)
  if (!(Math.abs(units) > 1)) return saidQuantity(Math.trunc(units) * unitM(say), 'altitude', say)
  const step = Math.max(1, 10 ** (Math.floor(Math.log10(Math.abs(units)) + GRACE) - 1))
  return saidQuantity(Math.floor(units / step + GRACE) * step * unitM(say), 'altitude', say)
}

/** Hose to lay out: whole feet or metres, rounded up so that it reaches. */
export const saidHoseRun = (metres: number, say: Say): string =>
  saidQuantity(Math.ceil(metres / unitM(say) - GRACE) * unitM(say), 'altitude', say)
