import type { Say } from './language.ts'
import { knowsWord, planWord } from './plan-words.ts'

/** How the plan labels a pipe of the tables: system, size as printed, wall as the standard names it. */
const LABEL = /^(\S+) (.+) (\S+)$/
/** Systems whose sizes are millimetres of outside diameter; the rest are nominal inches. */
const METRIC: ReadonlySet<string> = new Set(['pe-iso', 'duct-metric', 'copper-metric', 'microduct'])
const COPPER = /^copper-/
/** A wall of its own thickness in inches, as light gas tubing has. */
const THICKNESS = /^0\.\d+$/

/** "SDR 9", "schedule 40", "type K": how the trade says a wall; the dimension ratio and the letter are the standard's. */
export function wallName(wall: string, system: string, say: Say): string {
  const ratio = /^(S?DR) ?-?(\d.*)$/i.exec(wall)
  if (ratio) return `${ratio[1]?.toUpperCase()} ${ratio[2]}`
  const schedule = /^SCH ?(\d+)$/i.exec(wall)
  if (schedule) return `${planWord('pipeWall', 'schedule', say)} ${schedule[1]}`
  if (COPPER.test(system)) return `${planWord('pipeWall', 'type', say)} ${wall}`
  if (THICKNESS.test(wall)) return `${planWord('pipeWall', 'wall', say)} ${wall} in`
  return wall === 'nominal' ? '' : wall
}

/** "3/4" → "3/4 in"; "1 CTS" → "1 in CTS"; "32" → "32 mm"; a microduct is told by outside and inside. */
function sizeName(size: string, system: string): string {
  if (METRIC.has(system)) return `${size} mm`
  const [nominal = size, family] = size.replace(/\s*in\b/, '').split(' ')
  return family === undefined ? `${nominal} in` : `${nominal} in ${family}`
}

export type PipeParts = { readonly system: string; readonly size: string; readonly wall: string }

/** A pipe of the tables by its parts; without a wall where none was said. Null for a system that is not known. */
export function pipeNameOf({ system, size, wall }: PipeParts, say: Say): string | null {
  if (!knowsWord('pipeSystem', system)) return null
  const name = planWord('pipeSystem', system, say)
  const sized = size === '' ? '' : sizeName(size, system)
  const joined = say.lang === 'en' ? [sized, name] : [name, sized]
  const words = joined.filter((each) => each !== '').join(say.lang === 'en' ? ' ' : ' de ')
  const wallWords = wall === '' ? '' : wallName(wall, system, say)
  return wallWords === '' ? words : `${words}, ${wallWords}`
}

/** A pipe as a crew calls it: "3/4 in copper water tube, type K". One known by its diameter only has no name but that. */
export function pipeName(label: string, say: Say): string {
  if (label === 'by-diameter') return planWord('pipeSystem', label, say)
  const [, system = '', size = '', wall = ''] = LABEL.exec(label) ?? []
  return pipeNameOf({ system, size, wall }, say) ?? label
}
