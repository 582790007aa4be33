import type { AirFix } from '../../shared/core/plan/air-fixes.ts'
import { type AirReach, REACH_LIMITS, type Reach } from '../../shared/core/plan/air-reach.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { formatMoney } from '../../shared/quantities/format-money.ts'
import { NO_NUMBER } from '../../shared/quantities/format-quantity.ts'
import { airFixSentence } from '../../shared/text/air-fix-sentences.ts'
import { AIR_TABLE_WORDS, type AirTableWords } from '../../shared/text/air-table-words.ts'
import type { Say } from '../../shared/text/language.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { saidReach } from '../../shared/text/say-hose-run.ts'
import { saidQuantity } from '../../shared/text/say-quantity.ts'
import { columns } from './answer.ts'

export type AirFound = {
  readonly plan: Plan
  readonly fixes: readonly AirFix[]
  readonly reach: AirReach
}

type Row = readonly string[]

function nowRows({ air }: Plan, words: AirTableWords, say: Say): readonly Row[] {
  const gauge = (pa: number | null) => (pa === null ? words.none : saidQuantity(pa, 'gaugePressure', say))
  const { band, sagPa = 0, mostAtToolGaugePa, fuel, water, tools = [] } = air
  return [
    ...tools.map((tool, place) => [
      tool.branch === '' ? words.atTool : tool.branch,
      gauge(tool.gaugePa),
      saidQuantity(tool.flowM3PerS, 'volumeFlow', say),
      `${planWord('toolState', tool.state, say)}${place === 0 ? `; ${planWord('limitedBy', air.limitedBy, say)}` : ''}`,
    ]),
    ...(band === undefined ? [] : [[words.band, gauge(band.lowGaugePa), gauge(band.highGaugePa)]]),
    ...(sagPa > 0 ? [[words.sag, saidQuantity(sagPa, 'pressureDifference', say)]] : []),
    ...(mostAtToolGaugePa === undefined ? [] : [[words.most, gauge(mostAtToolGaugePa)]]),
    ...(fuel === undefined ? [] : [[words.fuel, saidQuantity(fuel.nowM3PerS, 'liquidFlow', say)]]),
    ...(water
      ? [[words.water, saidQuantity(water.atMachineKgPerS + water.downLineKgPerS, 'massFlow', say)]]
      : []),
  ]
}

function fixRows(fixes: readonly AirFix[], currency: string | null, words: AirTableWords, say: Say) {
  const duration = (s: number | null) => (s === null ? NO_NUMBER : saidQuantity(s, 'duration', say))
  const money = (minorUnits: number | null) =>
    minorUnits === null || currency === null ? NO_NUMBER : formatMoney(minorUnits, currency, 100)
  return [
    ['', words.atTool, words.hammering, words.price],
    ...fixes.map((fix) => [
      airFixSentence(fix, say),
      saidQuantity(fix.toolGaugePa, 'gaugePressure', say),
      duration(fix.hammerS),
      money(fix.p50MinorUnits),
    ]),
  ]
}

type ReachWords = { readonly beyond: string; readonly notNow: string; readonly most: number }

const reachText = ({ value, why }: Reach, words: ReachWords, said: (value: number) => string): string =>
  value === null ? (why === 'beyond' ? `${words.beyond} ${said(words.most)}` : words.notNow) : said(value)

function reachRows(reach: AirReach, words: AirTableWords, say: Say): readonly Row[] {
  const { beyond } = words
  const hose = { beyond, notNow: words.notNowHose, most: REACH_LIMITS.hoseM }
  const tools = { beyond, notNow: words.notNowTools, most: REACH_LIMITS.tools }
  const site = { beyond, notNow: words.notNowSite, most: REACH_LIMITS.siteM }
  const far = (metres: number) => saidReach(metres, say)
  return [
    [words.longest, reachText(reach.longestHoseM, hose, far)],
    [words.tools, reachText(reach.mostTools, tools, String)],
    [words.highest, reachText(reach.highestSiteM, site, far)],
  ]
}

/** What each tool gets, what would help, and how far this line goes, as a page of text. */
export function airText({ plan, fixes, reach }: AirFound, say: Say): string {
  const words = AIR_TABLE_WORDS[say.lang]
  const indented = (rows: readonly Row[]) =>
    columns(rows.map(([first = '', ...rest]) => [`  ${first}`, ...rest]))
  const helps =
    fixes.length === 0
      ? `  ${words.nothing}\n`
      : indented(fixRows(fixes, plan.price?.currency ?? null, words, say))
  const reaches = indented(reachRows(reach, words, say))
  const wanted = saidQuantity(reach.wantedGaugePa, 'gaugePressure', say)
  return `${words.gets}\n${indented(nowRows(plan, words, say))}\n${words.helps}\n${helps}\n${words.reach} ${wanted}\n${reaches}`
}
