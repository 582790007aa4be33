import type { Measure, PartSpec, ToolTemplate } from '../../shared/core/shop/template.ts'
import type { DueCode, ToolCard } from '../../shared/core/shop/tool-card.ts'
import type { HoldReason } from '../../shared/core/shop/tool-state.ts'
import { plainCode } from '../../shared/text/by-system.ts'
import { shown } from '../fields/shown.ts'
import { language } from '../state/language-choice.ts'
import type { ShopTool } from './shop-facts.ts'
import { SHOP } from './shop-words.ts'

/** A word of a table, or the code made readable: an owner's own list has codes of its own. */
const wordOf = (table: Readonly<Record<string, string>>, code: string): string =>
  table[code] ?? plainCode(code)

export const partName = (part: Pick<PartSpec, 'key' | 'name'>): string =>
  part.name ?? wordOf(SHOP.parts, part.key)
export const partNameOf = (template: ToolTemplate, key: string): string =>
  partName(template.parts.find((part) => part.key === key) ?? { key, name: null })
export const measureName = (measure: Measure): string => SHOP.measures[measure]
export const gradeName = (grade: string): string => wordOf(SHOP.grades, grade)

/** A time of use; none is none of minutes, not of seconds. */
export const timeWords = (timeS: number): string => (timeS <= 0 ? '0 min' : shown(timeS, 'duration'))

/** A day as the reader's language writes it. */
export function dayWords(on: string): string {
  const at = new Date(`${on}T12:00:00`)
  if (Number.isNaN(at.getTime())) return on
  return new Intl.DateTimeFormat(language.value === 'es' ? 'es' : 'en', { dateStyle: 'medium' }).format(at)
}

export function holdWords(reason: HoldReason, tool: ShopTool): string {
  switch (reason.code) {
    case 'tilt-failed':
      return SHOP.holds['tilt-failed'](dayWords(reason.on))
    case 'replace':
      return SHOP.holds.replace(partNameOf(tool.template, reason.part), dayWords(reason.on))
    case 'withdrawn':
      return SHOP.holds.withdrawn(tool.file.withdrawn ?? '')
  }
}

/** What is due, a line each; parts by the bore they fall before. */
export function dueWords(code: DueCode, card: ToolCard, tool: ShopTool): readonly string[] {
  if (code === 'parts') {
    return card.parts.flatMap(({ key, dueBefore }) =>
      dueBefore === null
        ? []
        : [SHOP.due.parts(partNameOf(tool.template, key), `${dueBefore.name}, ${dayWords(dueBefore.on)}`)],
    )
  }
  if (code !== 'strip-hours') return [SHOP.due[code]]
  return [SHOP.due['strip-hours'](timeWords(card.sinceStripS), timeWords(card.stripEveryS))]
}
