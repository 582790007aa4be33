import type { Plan, PricePart } from '../../../shared/core/plan/plan.ts'
import { formatMoney } from '../../../shared/quantities/format-money.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { priceBookName, priceQuantity } from '../../../shared/text/price-quantity.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { FURTHER } from '../../words/further-words.ts'
import { Panel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'
import { Figure } from './figure.tsx'
import { madeOfPrice, WHOLE_UNITS } from './made-of.ts'

const W = FURTHER.price

function Priced({ price }: { readonly price: PricePart }) {
  const money = (minorUnits: number) => formatMoney(minorUnits, price.currency, WHOLE_UNITS)
  const made = { relations: [], parts: madeOfPrice(price), rule: FURTHER.made.price }
  return (
    <>
      <div class="figures">
        <Figure label={ANSWERS.quoted} value={money(price.quotedMinorUnits)} working={made} />
        <Figure label={W.likely} value={money(price.p50MinorUnits)} working={made} />
        <Figure label={W.high} value={money(price.p80MinorUnits)} working={made} />
        {price.belowMinimumCallOut && (
          <Figure label={W.minimum} value={money(price.minimumCallOutMinorUnits)} />
        )}
      </div>
      <p class="fine">
        {priceBookName(price.book, say.value)}. {price.invented && W.invented}
      </p>
      <DataTable
        isShort
        caption={W.caption}
        columns={W.columns}
        rows={price.lines.map((line) => ({
          key: line.code,
          cells: [
            planWord('priceLine', line.code, say.value),
            priceQuantity(line, say.value),
            money(line.minorUnits),
          ],
        }))}
      />
    </>
  )
}

export function PricePanel({ plan }: { readonly plan: Plan }) {
  return (
    <Panel id="price" heading={W.heading}>
      {plan.price === undefined ? <p>{W.none}</p> : <Priced price={plan.price} />}
    </Panel>
  )
}
