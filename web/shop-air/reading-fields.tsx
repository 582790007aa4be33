import { useState } from 'preact/hooks'
import { hoseFactorOfReading } from '../../shared/core/plan/air-reading.ts'
import { parseQuantity } from '../../shared/quantities/parse-quantity.ts'
import { IssueNotes } from '../fields/issue-notes.tsx'
import { shownNumber } from '../fields/shown.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { listAt } from '../state/document-path.ts'
import { AIR } from '../words/air-words.ts'

const W = AIR.fleet
type Props = { readonly model: CrossingModel }

/** The day here, as a file has it. */
function today(): string {
  const now = new Date()
  const two = (part: number) => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** A gauge read at the tool while it hammers, turned into what these hoses really lose; dated, and saved with them. */
export function ReadingFields({ model }: Props) {
  const [read, setRead] = useState('')
  const [on, setOn] = useState('')
  const [factor, setFactor] = useState<number | null | undefined>(undefined)
  const pressure = parseQuantity(read, 'gaugePressure')
  const answers = model.answers.value
  const calibrate = () => {
    if (!pressure.ok || answers.state !== 'current') return
    const found = hoseFactorOfReading(answers.input, pressure.valueSi)
    setFactor(found)
    if (found === null) return
    const lossFactor = Number(found.toPrecision(4))
    model.setAll(
      listAt(model.document.value, 'air.hoses').flatMap((_hose, place) => [
        [`air.hoses.${place}.lossFactor`, lossFactor] as const,
        [`air.hoses.${place}.measuredOn`, on === '' ? today() : on] as const,
      ]),
    )
  }
  return (
    <>
      <h3>{W.reading}</h3>
      <p class="fine">{W.readingHint}</p>
      <div class="fields">
        <div class="field">
          <label for="reading-pressure">{W.readPressure}</label>
          <input
            id="reading-pressure"
            type="text"
            autocomplete="off"
            value={read}
            aria-invalid={read.trim() !== '' && !pressure.ok}
            onInput={(event) => setRead(event.currentTarget.value)}
            aria-describedby="reading-pressure-issues"
          />
          <IssueNotes
            id="reading-pressure-issues"
            issues={read.trim() === '' || pressure.ok ? [] : [{ ...pressure.issue, path: 'reading' }]}
            onTake={setRead}
          />
        </div>
        <div class="field">
          <label for="reading-day">{W.readOn}</label>
          <input
            id="reading-day"
            type="date"
            value={on}
            onInput={(event) => setOn(event.currentTarget.value)}
          />
        </div>
      </div>
      <button
        type="button"
        class="quiet"
        disabled={!pressure.ok || answers.state !== 'current'}
        onClick={calibrate}
      >
        {W.calibrate}
      </button>
      <p role="status" class="fine">
        {factor === undefined ? '' : factor === null ? W.cannot : W.calibrated(shownNumber(factor))}
      </p>
    </>
  )
}
