import './access.css'
import { useEffect, useState } from 'preact/hooks'
import { type SharedPlan, sharedPlan } from '../../shared/contracts/shared-plan.ts'
import { knowsWord, planWord } from '../../shared/text/plan-words.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { StatusWord } from '../crossings/answers/release-panel.tsx'
import { shown } from '../fields/shown.ts'
import { whenWords } from '../saved/when.ts'
import { language } from '../state/language-choice.ts'
import { say, units } from '../state/unit-choice.ts'
import { type Answered, askAccess } from './access-requests.ts'
import { ACCESS } from './access-words.ts'

const kindWord = (kind: string): string =>
  knowsWord('utility', kind) ? planWord('utility', kind, say.value) : kind

function SharedPart({
  plan,
  name,
}: {
  readonly plan: NonNullable<SharedPlan['plan']>
  readonly name: string
}) {
  const { bore, lines, reasons, cautions, drawing } = plan
  const rows = lines.map((line, at) => ({
    key: `${at} ${line.kind}`,
    cells: [
      kindWord(line.kind),
      shown(line.stationM, 'length'),
      shown(line.separationM, 'length'),
      shown(line.requiredM, 'length'),
      line.shortM !== null && line.shortM > 0 ? shown(line.shortM, 'length') : shown(null, 'length'),
    ],
  }))
  return (
    <>
      <p>
        <StatusWord status={plan.status} />
      </p>
      <p>{plan.statusText}</p>
      {reasons.length > 0 && (
        <ul>
          {reasons.map(({ code, text }) => (
            <li key={`${code} ${text}`}>{text}</li>
          ))}
        </ul>
      )}
      <p>
        {ACCESS.sharedFacts(
          shown(bore.lengthM, 'length'),
          shown(bore.diameterM, 'diameter'),
          shown(bore.coverM, 'length'),
        )}
      </p>
      <section
        class="shared-drawing"
        aria-label={ACCESS.sharedDrawing}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
        tabIndex={0}
      >
        <img
          src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(drawing)}`}
          alt={`${ACCESS.sharedDrawing}: ${name}`}
        />
      </section>
      {rows.length > 0 && (
        <DataTable caption={ACCESS.sharedLines} columns={ACCESS.sharedColumns} rows={rows} />
      )}
      {cautions.map(({ code, text }) => (
        <p key={code} class="fine">
          {text}
        </p>
      ))}
    </>
  )
}

/** One crossing, for somebody without an account. The token stands behind the # and never reaches a log. */
export function SharedPage() {
  const [answer, setAnswer] = useState<Answered<SharedPlan> | null>(null)
  const token = location.hash.slice(1)
  const chosen = { language: language.value, units: units.value }
  useEffect(() => {
    const body = { token, units: chosen.units }
    void askAccess('POST', '/api/shared', sharedPlan, { body }).then(setAnswer)
  }, [token, chosen.language, chosen.units])
  if (answer === null) {
    return (
      <main class="access-page">
        <h1>{ACCESS.shared}</h1>
        <p role="status">{ACCESS.oneMoment}</p>
      </main>
    )
  }
  if (answer.state !== 'done') {
    return (
      <main class="access-page">
        <h1>{ACCESS.shared}</h1>
        <p role="status">{answer.state === 'unreachable' ? ACCESS.unreachable : ACCESS.sharedGone}</p>
      </main>
    )
  }
  const { name, changedAt, expiresAt, plan } = answer.value
  return (
    <main class="access-page shared-page">
      <h1>{name}</h1>
      <p class="hint">{ACCESS.sharedNote(whenWords(changedAt), whenWords(expiresAt))}</p>
      {plan === null ? <p>{ACCESS.sharedNothing}</p> : <SharedPart plan={plan} name={name} />}
    </main>
  )
}
