import type { InUnits, PartReport } from '../../shared/core/shop/part-report.ts'
import { slowAdvance } from '../../shared/core/shop/slow-advance.ts'
import { kitOf, swapsFor, type ToolCard } from '../../shared/core/shop/tool-card.ts'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import { shown, shownChance } from '../fields/shown.ts'
import { sizeWords } from './printed-sheet.tsx'
import type { ShopTool, ShopView } from './shop-facts.ts'
import { dayWords, partNameOf, timeWords } from './shop-said.ts'
import { SHOP } from './shop-words.ts'

/** Less than this is the reading error of a straight edge, not a bore. */
const BORE_SEEN_M = 0.0001

type Props = { readonly tool: ShopTool; readonly card: ToolCard; readonly view: ShopView }

const unitWords = (units: InUnits | null): string =>
  units === null
    ? SHOP.wear.noBound
    : [
        timeWords(units.hammerS),
        shown(units.lengthM, 'length'),
        SHOP.wear.bores(units.bores >= 10 ? String(Math.floor(units.bores)) : units.bores.toFixed(1)),
        ...(units.on === null ? [] : [dayWords(units.on)]),
      ].join(' · ')

/** Bad day, likely, good day; "no finite bound yet" is said, not hidden. */
function Left({ report }: { readonly report: PartReport }) {
  const { forecast, inUnits } = report
  const levels = [forecast.p10S, forecast.p50S, forecast.p90S]
  if (levels.every((each) => each === null)) return <>{SHOP.wear.noBound}</>
  return (
    <ol class="wear-left">
      {levels.map((each, place) => (
        <li key={String(place)}>
          {SHOP.wear.levels[place]}: {each === null ? SHOP.wear.noBound : unitWords(inUnits(each))}
        </li>
      ))}
    </ol>
  )
}

function standsOn({ forecast }: PartReport): string {
  if (forecast.by === 'lives') return SHOP.wear.standsOnLives(forecast.count)
  return forecast.by === 'wear' && forecast.count === 0
    ? SHOP.wear.standsOnNone
    : SHOP.wear.standsOn(forecast.count)
}

function Chances({ report, view, tool }: { report: PartReport; view: ShopView; tool: string }) {
  const { planned } = view.factsOf(tool)
  if (report.due === null || planned.length === 0) return null
  return (
    <details>
      <summary>{SHOP.wear.chance}</summary>
      <ol>
        {report.due.bores.map(({ during }, place) => {
          const bore = planned[place]
          const name = bore === undefined ? '' : `${bore.name}, ${dayWords(bore.on)}`
          return (
            <li key={`${bore?.id} ${bore?.on}`}>
              {name}: {shownChance(during)}
            </li>
          )
        })}
      </ol>
    </details>
  )
}

function PartWear({ tool, card, view, report }: Props & { readonly report: PartReport }) {
  const state = card.states.find(({ part }) => part === report.key)
  const judged = state?.judged ?? null
  const used =
    judged?.measures.flatMap((each) => (each.usedFraction === null ? [] : [each.usedFraction])) ?? []
  const isPlanned = view.factsOf(tool.entry.id).planned.length > 0
  const notBefore = report.due === null ? SHOP.wear.noBound : SHOP.wear.none
  const before =
    report.dueBefore === null
      ? isPlanned
        ? notBefore
        : SHOP.wear.noPlan
      : `${report.dueBefore.name}, ${dayWords(report.dueBefore.on)}`
  const { today } = view.factsOf(tool.entry.id)
  const order =
    report.orderBy === null || report.dueBefore === null
      ? null
      : report.orderBy < today
        ? SHOP.wear.orderNow(dayWords(report.dueBefore.on))
        : SHOP.wear.orderBy(dayWords(report.orderBy))
  const found =
    judged === null || state === undefined || state.on === null
      ? SHOP.why['not-read']
      : `${judged.replaced ? SHOP.form.replaced : judged.verdict === null ? SHOP.why['not-read'] : SHOP.verdicts[judged.verdict]}, ${dayWords(state.on)}`
  return (
    <section class="wear-part">
      <h3>
        {partNameOf(tool.template, report.key)}
        {report.piece !== null && <span class="fine"> “{report.piece.name}”</span>}
      </h3>
      <dl class="tool-figures">
        <div>
          <dt>{SHOP.wear.state}</dt>
          <dd>
            {found}
            {used.length > 0 && !judged?.replaced && ` (${Math.round(Math.max(...used) * 100)} %)`}
          </dd>
        </div>
        <div>
          <dt>{SHOP.wear.used}</dt>
          <dd>
            {timeWords(report.hammerS)} · {shown(report.lengthM, 'length')} ·{' '}
            {SHOP.wear.bores(String(report.boreCount))}
          </dd>
        </div>
        <div class="wear-wide">
          <dt>{SHOP.wear.left}</dt>
          <dd>
            <Left report={report} />
            <p class="fine">{standsOn(report)}</p>
            {report.boreWornM !== null && report.boreWornM > BORE_SEEN_M && (
              <p class="fine">{SHOP.wear.bore(sizeWords(report.boreWornM))}</p>
            )}
          </dd>
        </div>
        <div class="wear-wide">
          <dt>{SHOP.wear.before}</dt>
          <dd>
            {before}
            {order !== null && ` · ${order}`}
          </dd>
        </div>
      </dl>
      <Chances report={report} view={view} tool={tool.entry.id} />
    </section>
  )
}

/** Statistics behind the card: what is left of each part, and before which bore it falls due. */
export function WearPanel({ tool, card, view }: Props) {
  const slow = slowAdvance(view.advanceOf(tool.entry.id))
  const assumed = Math.max(0, ...card.parts.map(({ assumedCount }) => assumedCount))
  const kit = kitOf(card)
  const { today } = view.factsOf(tool.entry.id)
  const swaps = swapsFor(card, view.factsOf(tool.entry.id))
  return (
    <section class="panel" aria-labelledby="wear-heading">
      <h2 id="wear-heading">{SHOP.wear.heading}</h2>
      {slow !== null && (
        <p class="tool-word">
          <StatusMark shape="look" /> {SHOP.wear.slow(`${Math.round(slow.share * 100)} %`)}
        </p>
      )}
      {(kit.length > 0 || swaps.length > 0) && (
        <>
          <h3>{SHOP.wear.kit}</h3>
          <ul>
            {kit.map(({ key, orderBy, neededOn }) => (
              <li key={key}>
                {orderBy < today
                  ? `${partNameOf(tool.template, key)}: ${SHOP.wear.orderNow(dayWords(neededOn))}`
                  : SHOP.wear.kitLine(partNameOf(tool.template, key), dayWords(orderBy), dayWords(neededOn))}
              </li>
            ))}
            {swaps.map(({ key, piece }) => (
              <li key={piece.id}>{SHOP.wear.swap(partNameOf(tool.template, key), piece.name)}</li>
            ))}
          </ul>
        </>
      )}
      <div class="wear-parts">
        {card.parts.map((report) => (
          <PartWear key={report.key} tool={tool} card={card} view={view} report={report} />
        ))}
      </div>
      <p class="fine">{SHOP.wear.house}</p>
      {assumed > 0 && <p class="fine">{SHOP.wear.assumed(assumed, card.boreCount)}</p>}
    </section>
  )
}
