import { z } from 'zod'
import { formatMoney } from '../../shared/quantities/format-money.ts'
import { statusWord } from '../../shared/text/release-sentences.ts'
import { shown, shownChance } from '../fields/shown.ts'
import { say } from '../state/unit-choice.ts'
import type { STORED } from './saved-words.ts'

/** Read piece by piece, so that a result of an older engine still shows what it has. */
const status = z.object({ release: z.object({ status: z.enum(['hold', 'check']) }) })
const likely = z.object({ p50: z.number() })
const hammer = z.object({ run: z.object({ hammerTimeS: likely }) })
const crossing = z.object({ run: z.object({ crossingTimeS: likely }) })
const arrives = z.object({ run: z.object({ arrivalProbability: z.number() }) })
const pressure = z.object({ air: z.object({ toolGaugePa: z.number() }) })
const cover = z.object({ bore: z.object({ coverM: z.number() }) })
const price = z.object({ price: z.object({ currency: z.string(), quotedMinorUnits: z.number() }) })

type FigureName = keyof typeof STORED.figures

const WHOLE_UNITS = 100

/** The figures a person would have written down, as they are shown; what is not there is not in it. */
function keyFigures(result: unknown): ReadonlyMap<FigureName, string> {
  const found = new Map<FigureName, string>()
  const add = <Value>(name: FigureName, schema: z.ZodType<Value>, words: (value: Value) => string) => {
    const read = schema.safeParse(result)
    if (read.success) found.set(name, words(read.data))
  }
  add('status', status, (plan) => statusWord(plan.release.status, say.value.lang))
  add('hammer', hammer, (plan) => shown(plan.run.hammerTimeS.p50, 'duration'))
  add('crossing', crossing, (plan) => shown(plan.run.crossingTimeS.p50, 'duration'))
  add('arrives', arrives, (plan) => shownChance(plan.run.arrivalProbability))
  add('pressure', pressure, (plan) => shown(plan.air.toolGaugePa, 'gaugePressure'))
  add('cover', cover, (plan) => shown(plan.bore.coverM, 'depth'))
  add('quoted', price, (plan) => formatMoney(plan.price.quotedMinorUnits, plan.price.currency, WHOLE_UNITS))
  return found
}

export type FigureRow = { readonly name: FigureName; readonly saved: string; readonly now: string }

/** Figures that read otherwise now than when they were saved. */
export function movedFigures(saved: unknown, now: unknown): readonly FigureRow[] {
  const [before, after] = [keyFigures(saved), keyFigures(now)]
  const names = [...new Set([...before.keys(), ...after.keys()])]
  return names
    .map((name) => ({ name, saved: before.get(name) ?? '–', now: after.get(name) ?? '–' }))
    .filter((row) => row.saved !== row.now)
}
