import { useState } from 'preact/hooks'
import { Folded } from '../crossings/form/panel.tsx'
import type { JsonObject } from '../state/json.ts'
import { type EditSent, sendEdit } from './firm-edits.ts'
import { LOCATE } from './locate-words.ts'

const FAMILIES = ['full-days', 'nth-day', 'from-next-opening', 'clock-hours'] as const
const W = LOCATE.edit
type Typed = Readonly<
  Record<'by' | 'why' | 'holidays' | 'family' | 'count' | 'lifeDays' | 'zone' | 'checkedOn', string>
>
const EMPTY: Typed = {
  by: '',
  why: '',
  holidays: '',
  family: '',
  count: '',
  lifeDays: '',
  zone: '',
  checkedOn: '',
}

/** Only what was typed; the server looks at it again. */
function editOf(id: string, typed: Typed, today: string): JsonObject {
  const { by, why, zone, checkedOn, family, count, lifeDays } = typed
  const holidays = typed.holidays.split(/[\s,;]+/).filter((each) => each !== '')
  return {
    id,
    on: today,
    by,
    ...(why === '' ? {} : { why }),
    ...(zone === '' ? {} : { zone }),
    ...(checkedOn === '' ? {} : { checkedOn }),
    ...(family === '' || count === '' ? {} : { notice: { family, count: Number(count) } }),
    ...(lifeDays === '' ? {} : { lifeDays: { count: Number(lifeDays), of: 'calendar' } }),
    ...(holidays.length === 0 ? {} : { holidays }),
  }
}

/** This device's own day: who corrects a rule does so today, where they are. */
function today(): string {
  const now = new Date()
  const two = (value: number) => String(value).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

export function EditRow({ id }: { readonly id: string }) {
  const [typed, setTyped] = useState(EMPTY)
  const [sent, setSent] = useState<EditSent | null>(null)
  const field = (name: keyof Typed, label: string, type = 'text') => (
    <div class="field" key={name}>
      <label for={`edit-${name}`}>{label}</label>
      <input
        id={`edit-${name}`}
        type={type}
        autocomplete="off"
        value={typed[name]}
        onInput={(event) => setTyped({ ...typed, [name]: event.currentTarget.value })}
      />
    </div>
  )
  const keep = async () => {
    const outcome = await sendEdit(editOf(id, typed, today()))
    setSent(outcome)
    if (outcome === 'saved') setTyped(EMPTY)
  }
  return (
    <Folded words={W.heading}>
      {field('by', W.by)}
      {field('why', W.why)}
      <div class="field">
        <label for="edit-family">{W.family}</label>
        <select
          id="edit-family"
          value={typed.family}
          onChange={(event) => setTyped({ ...typed, family: event.currentTarget.value })}
        >
          <option value="" />
          {FAMILIES.map((each) => (
            <option key={each} value={each}>
              {W.families[each]}
            </option>
          ))}
        </select>
      </div>
      {field('count', W.count)}
      {field('lifeDays', W.lifeDays)}
      {field('zone', W.zone)}
      {field('holidays', W.holidays)}
      {field('checkedOn', W.checkedOn, 'date')}
      <div class="field">
        <button type="button" class="quiet" disabled={typed.by.trim() === ''} onClick={() => void keep()}>
          {W.save}
        </button>
        <p role="status">{sent === null ? '' : W[sent]}</p>
      </div>
    </Folded>
  )
}
