import { useEffect, useState } from 'preact/hooks'
import {
  type AirFix,
  airFixes,
  FIX_ORDERS,
  type FixOrder,
  rankedFixes,
} from '../../../shared/core/plan/air-fixes.ts'
import { type AirReach, airReach, REACH_LIMITS, type Reach } from '../../../shared/core/plan/air-reach.ts'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { formatMoney } from '../../../shared/quantities/format-money.ts'
import { NO_NUMBER } from '../../../shared/quantities/format-quantity.ts'
import { parseQuantity } from '../../../shared/quantities/parse-quantity.ts'
import { airFixSentence } from '../../../shared/text/air-fix-sentences.ts'
import { saidReach } from '../../../shared/text/say-hose-run.ts'
import { shown } from '../../fields/shown.ts'
import { shopCompressors } from '../../shop-air/shop-air.ts'
import { say } from '../../state/unit-choice.ts'
import { AIR } from '../../words/air-words.ts'
import { DataTable } from './data-table.tsx'
import { Figure } from './figure.tsx'
import { WHOLE_UNITS } from './made-of.ts'

const W = AIR.fixes
type Props = { readonly plan: Plan; readonly input: CrossingInput }
type Worked = { readonly fixes: readonly AirFix[]; readonly reach: AirReach }

/** Every change is planned anew, so it waits until the typing has paused. */
const PAUSE_MS = 400
/** 85 psi: under it a tool is weak. Common practice. */
const USUAL_WANT_PA = 586_054

function useWorked({ plan, input }: Props, wantedGaugePa: number): Worked | null {
  const [worked, setWorked] = useState<Worked | null>(null)
  const shop = shopCompressors.value
  useEffect(() => {
    const timer = setTimeout(() => {
      setWorked({ fixes: airFixes(input, plan, shop), reach: airReach(input, wantedGaugePa) })
    }, PAUSE_MS)
    return () => clearTimeout(timer)
  }, [plan, input, wantedGaugePa, shop])
  return worked
}

/** What it brings, signed by words: less is better for minutes and money. */
const saved = (value: number | null, words: (value: number) => string): string => {
  if (value === null) return NO_NUMBER
  const text = words(Math.abs(value))
  return words(0) === text ? W.same : `${value > 0 ? '−' : '+'}${text}`
}

function FixTable({
  fixes,
  currency,
}: {
  readonly fixes: readonly AirFix[]
  readonly currency: string | null
}) {
  const money = (minorUnits: number) => formatMoney(minorUnits, currency ?? '', WHOLE_UNITS)
  return (
    <DataTable
      caption={W.caption}
      columns={W.columns}
      rows={fixes.map((fix) => ({
        key: airFixSentence(fix, say.value),
        cells: [
          airFixSentence(fix, say.value),
          shown(fix.toolGaugePa, 'gaugePressure'),
          `${shown(fix.hammerS, 'duration')} (${saved(fix.savedS, (s) => shown(s, 'duration'))})`,
          currency === null ? W.noPrice : saved(fix.savedMinorUnits, money),
        ],
      }))}
    />
  )
}

function OrderChoice({
  order,
  onChoose,
}: {
  readonly order: FixOrder
  readonly onChoose: (order: FixOrder) => void
}) {
  return (
    <div class="field">
      <label for="fix-order">{W.by}</label>
      <select
        id="fix-order"
        value={order}
        onChange={(event) => {
          const chosen = FIX_ORDERS.find((each) => each === event.currentTarget.value)
          if (chosen !== undefined) onChoose(chosen)
        }}
      >
        {FIX_ORDERS.map((each) => (
          <option key={each} value={each}>
            {W.orders[each]}
          </option>
        ))}
      </select>
    </div>
  )
}

function reachText(
  { value, why }: Reach,
  what: keyof typeof W.notNow,
  words: (value: number) => string,
  most: number,
): string {
  if (value !== null) return words(value)
  return why === 'beyond' ? W.beyond(words(most)) : W.notNow[what]
}

function ReachFigures({ reach }: { readonly reach: AirReach }) {
  const far = (metres: number) => saidReach(metres, say.value)
  return (
    <div class="figures">
      <Figure label={W.longest} value={reachText(reach.longestHoseM, 'hose', far, REACH_LIMITS.hoseM)} />
      <Figure label={W.tools} value={reachText(reach.mostTools, 'tools', String, REACH_LIMITS.tools)} />
      <Figure label={W.highest} value={reachText(reach.highestSiteM, 'site', far, REACH_LIMITS.siteM)} />
    </div>
  )
}

/** What could be changed on site, ranked by what it brings, and how far this line, this machine and this place go. */
export function AirFixesPanel({ plan, input }: Props) {
  const [order, setOrder] = useState<FixOrder>('minutes')
  const [want, setWant] = useState(() => shown(USUAL_WANT_PA, 'gaugePressure'))
  const parsed = parseQuantity(want, 'gaugePressure', { bare: 'refuse' })
  const worked = useWorked({ plan, input }, parsed.ok && parsed.valueSi > 0 ? parsed.valueSi : USUAL_WANT_PA)
  if (worked === null) return <p class="fine">{W.working}…</p>
  return (
    <>
      {worked.fixes.length === 0 ? (
        <p>{W.none}</p>
      ) : (
        <>
          <OrderChoice order={order} onChoose={setOrder} />
          <FixTable fixes={rankedFixes(worked.fixes, order)} currency={plan.price?.currency ?? null} />
        </>
      )}
      <h3>{W.limits}</h3>
      <div class="field">
        <label for="air-want">{W.want}</label>
        <input
          id="air-want"
          type="text"
          autocomplete="off"
          value={want}
          aria-invalid={!parsed.ok}
          onInput={(event) => setWant(event.currentTarget.value)}
        />
      </div>
      <ReachFigures reach={worked.reach} />
    </>
  )
}
