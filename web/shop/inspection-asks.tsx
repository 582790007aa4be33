import type { InspectionQuestion } from '../../shared/core/shop/inspection-questions.ts'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import { type Draft, questionKey } from './inspection-draft.ts'
import { sizeWords } from './printed-sheet.tsx'
import type { ShopTool } from './shop-facts.ts'
import { partNameOf } from './shop-said.ts'
import { SHOP } from './shop-words.ts'

type Props = {
  readonly tool: ShopTool
  readonly asks: readonly InspectionQuestion[]
  readonly draft: Draft
  readonly change: (to: Partial<Draft>) => void
}

function asked({ code, givenM, againstM }: InspectionQuestion): string {
  const given = sizeWords(givenM)
  switch (code) {
    case 'below-last':
      return SHOP.asks['below-last'](given, sizeWords(againstM))
    case 'negative':
      return SHOP.asks.negative(given)
    case 'inches-for-millimetres':
      return SHOP.asks['inches-for-millimetres'](given, sizeWords(againstM))
    default:
      return SHOP.asks[code]
  }
}

const MM_PER_M = 1000
const asTyped = (valueM: number): string => `${Number((valueM * MM_PER_M).toPrecision(4))} mm`

/** What a person must answer before the sheet is believed: it is so, or another value. */
export function InspectionAsks({ tool, asks, draft, change }: Props) {
  if (asks.length === 0) return null
  return (
    <div class="asks" role="alert">
      <h3>
        <StatusMark shape="look" /> {SHOP.form.asks}
      </h3>
      <ul>
        {asks.map((each) => {
          const place = `${each.part}.${each.key}`
          return (
            <li key={questionKey(each)}>
              <p>
                {each.part !== null && `${partNameOf(tool.template, each.part)}: `}
                {asked(each)}
              </p>
              <div class="big-choices">
                <button
                  type="button"
                  onClick={() => change({ confirmed: [...draft.confirmed, questionKey(each)] })}
                >
                  {SHOP.form.yes}
                </button>
                {each.candidatesM.map((valueM) => (
                  <button
                    key={valueM}
                    type="button"
                    onClick={() => change({ values: { ...draft.values, [place]: asTyped(valueM) } })}
                  >
                    {SHOP.form.useInstead(sizeWords(valueM))}
                  </button>
                ))}
              </div>
            </li>
          )
        })}
      </ul>
    </div>
  )
}
