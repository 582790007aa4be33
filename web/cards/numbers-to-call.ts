import { jurisdictionOf } from '../../shared/core/digsafe/jurisdiction-of.ts'
import { emergencyNumber } from '../../shared/text/card-words.ts'
import { listAt, textAt } from '../state/document-path.ts'
import { isObject, type JsonObject } from '../state/json.ts'

type Line = { readonly who: string; readonly phone: string }

export type Emergency = {
  readonly name: string
  readonly address: string
  readonly meeting: string
  readonly caller: string
  readonly engines: string
  readonly number: string
  readonly numbers: readonly Line[]
}

const text = (value: unknown): string => (typeof value === 'string' ? value.trim() : '')

/** What a crossing says for an emergency, read even from one that cannot be planned. */
export function emergencyOf(crossing: JsonObject): Emergency {
  const at = (path: string) => textAt(crossing, path)
  const own = listAt(crossing, 'emergency.numbers').map((each) =>
    isObject(each) ? { who: text(each.who), phone: text(each.phone) } : { who: '', phone: '' },
  )
  const owners = listAt(crossing, 'locate.responses').map((each) =>
    isObject(each) ? { who: text(each.owner), phone: text(each.phone) } : { who: '', phone: '' },
  )
  return {
    name: at('name'),
    address: at('emergency.address') || at('locate.ticket.site'),
    meeting: at('emergency.meeting'),
    caller: at('emergency.caller'),
    engines: at('emergency.engines'),
    number: emergencyNumber(jurisdictionOf(at('locate.jurisdiction'))),
    numbers: [...own, ...owners].filter(({ phone }) => phone !== ''),
  }
}
