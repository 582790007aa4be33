import { KINDS, type Kind } from '../core/kinds.ts'
import { formatMoney } from '../quantities/format-money.ts'
import { NO_NUMBER } from '../quantities/format-quantity.ts'
import { asSentence, bySystem } from './by-system.ts'
import type { Say, TextValues } from './language.ts'
import { knowsWordGroup, planWord } from './plan-words.ts'
import { saidHoseRun } from './say-hose-run.ts'
import {
  saidChance,
  saidGrade,
  saidOdds,
  saidQuantity,
  saidRoughly,
  saidTapeDepth,
  saidTapeSafely,
  saidVolumePerLength,
} from './say-quantity.ts'

/** Other ways to say a number than as a quantity of a kind. */
const WAYS: Readonly<Record<string, (value: number, say: Say, values: TextValues) => string>> = {
  chance: (value, say) => saidChance(value, say.lang),
  odds: (value, say) => saidOdds(value, say.lang),
  tape: (value, say) => saidTapeDepth(value, say),
  tapeUp: (value, say) => saidTapeSafely(value, 'up', say),
  tapeDown: (value, say) => saidTapeSafely(value, 'down', say),
  rough: (value, say) => saidRoughly(value, say),
  hoseRun: (value, say) => saidHoseRun(value, say),
  grade: (value, say) => saidGrade(value, say),
  perLength: (value, say) => saidVolumePerLength(value, say),
  oneDecimal: (value) => String(Number(value.toFixed(1))),
  twoDecimals: (value) => String(Number(value.toFixed(2))),
  whole: (value) => String(Math.round(value)),
  money: (value, _say, values) => formatMoney(value, String(values.currency ?? ''), 100),
}

const isKind = (how: string): how is Kind => Object.hasOwn(KINDS, how)

/** The ways a template may ask for: a kind of quantity, a way above, a group of words, or 'text'. */
export const isWay = (how: string): boolean =>
  how === 'text' || isKind(how) || Object.hasOwn(WAYS, how) || knowsWordGroup(how)

function said(name: string, how: string, values: TextValues, say: Say): string {
  const value = values[name]
  if (value === undefined) return NO_NUMBER
  if (knowsWordGroup(how) && !isKind(how)) {
    return String(value)
      .split(',')
      .map((code) => planWord(how, code, say))
      .join(', ')
  }
  if (how === 'text') return String(value)
  if (typeof value !== 'number' || !Number.isFinite(value)) return NO_NUMBER
  const way = WAYS[how]
  if (way) return way(value, say, values)
  return isKind(how) ? saidQuantity(value, how, say) : NO_NUMBER
}

/**
 * Puts values into a template: `{toolGaugePa:gaugePressure}` by its kind, `{kind:utility}` by the words for a code,
 * `{owner:text}` as it is, `{4 ft|1.2 m}` by the system. A value that is not there stands as a dash.
 */
export function fill(template: string, values: TextValues, say: Say): string {
  const filled = bySystem(template, say.system).replace(
    /\{(\w+):(\w+)\}/g,
    (_whole, name: string, how: string) => said(name, how, values, say),
  )
  return asSentence(filled)
}

/** The template of a code; one written for a kind or method of it ('line-not-exposed/sewer') goes first. */
export function templateOf(
  templates: Readonly<Record<string, string>>,
  code: string,
  variants: readonly (number | string | undefined)[] = [],
): string | null {
  for (const variant of variants) {
    const key = `${code}/${variant}`
    if (Object.hasOwn(templates, key)) return templates[key] ?? null
  }
  return Object.hasOwn(templates, code) ? (templates[code] ?? null) : null
}
