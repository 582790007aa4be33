import type { AirFlag, ToolState } from './air-part.ts'

/** Tool pressure flags, gauge: red under 70 psi, amber under 85, high over 110. Common practice. */
export const RED_BELOW_PA = 482_633
const AMBER_BELOW_PA = 586_054
export const HIGH_ABOVE_PA = 758_423

export function flagOf(toolGaugePa: number): AirFlag {
  if (toolGaugePa < RED_BELOW_PA) return 'low'
  if (toolGaugePa < AMBER_BELOW_PA) return 'weak'
  return toolGaugePa > HIGH_ABOVE_PA ? 'high' : 'good'
}

export function stateOf(gaugePa: number, isChoked: boolean): ToolState {
  if (isChoked) return 'choked'
  const flag = flagOf(gaugePa)
  return flag === 'low' ? 'starved' : flag
}
