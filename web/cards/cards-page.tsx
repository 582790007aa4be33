import './cards.css'
import type { ComponentChildren } from 'preact'
import { useErrorBoundary } from 'preact/hooks'
import { useRoute } from 'preact-iso'
import { cardFor } from '../../shared/text/card-sentences.ts'
import { CARD_SOURCES, CARDS, type CardId } from '../../shared/text/card-words.ts'
import { openCrossing } from '../state/open-crossing.ts'
import { say } from '../state/unit-choice.ts'
import { cardPage, cards } from '../words/card-words.ts'
import { type Emergency, emergencyOf } from './numbers-to-call.ts'
import { WhereTheNoseIs } from './where-the-nose-is.tsx'

const isCard = (id: string): id is CardId => CARDS.some((each) => each === id)

/** Only what a telephone dials. */
const dialled = (phone: string): string => `tel:${phone.replace(/[^\d+#*]/g, '')}`

const Steps = ({ heading, steps, kind }: { heading: string; steps: readonly string[]; kind: string }) => (
  <section class={`card-steps card-${kind}`}>
    <h3>{heading}</h3>
    <ol>
      {steps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
  </section>
)

/** Where we are and whom to call, off the crossing in hand; what nobody entered is said. */
function WhereWeAre({ emergency }: { readonly emergency: Emergency }) {
  const W = cardPage()
  const rows: readonly (readonly [string, string])[] = [
    [W.crossing, emergency.name],
    [W.address, emergency.address],
    [W.meeting, emergency.meeting],
    [W.caller, emergency.caller],
    [W.engines, emergency.engines],
  ]
  return (
    <dl class="card-place">
      {rows.map(([term, said]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{said === '' ? W.notGiven : said}</dd>
        </div>
      ))}
    </dl>
  )
}

function Numbers({ emergency }: { readonly emergency: Emergency | null }) {
  const W = cardPage()
  const number = emergency?.number ?? '911'
  return (
    <div class="card-numbers">
      <a class="card-call" href={`tel:${number}`}>
        {W.call} {number}
      </a>
      {emergency?.numbers.map(({ who, phone }) => (
        <a key={`${who} ${phone}`} class="card-call" href={dialled(phone)}>
          {who} {phone}
        </a>
      ))}
      {emergency !== null && emergency.numbers.length === 0 && <p class="fine">{W.noNumbers}</p>}
    </div>
  )
}

function CardShown({ id, emergency }: { readonly id: CardId; readonly emergency: Emergency | null }) {
  const W = cardPage()
  const card = cardFor(cards()[id], emergency?.number ?? '911', say.value)
  return (
    <article class="card" aria-labelledby={`card-${id}`}>
      <h2 id={`card-${id}`}>{card.title}</h2>
      <Steps heading={W.now} steps={card.now} kind="now" />
      {id !== 'stuck' && <Numbers emergency={emergency} />}
      {emergency !== null && <WhereWeAre emergency={emergency} />}
      <Steps heading={W.after} steps={card.after} kind="after" />
      <Steps heading={W.never} steps={card.never} kind="never" />
      {card.note !== undefined && <p>{card.note}</p>}
      <p class="fine">
        {W.sources}: <span lang="en">{CARD_SOURCES[id].join('; ')}.</span>
      </p>
    </article>
  )
}

/** A mistake of ours in a plan must not take the card with it. */
function Apart({ children }: { readonly children: ComponentChildren }) {
  const [error] = useErrorBoundary((mistake) => console.error(mistake))
  return error === undefined ? children : <p>{cardPage().noPlan}</p>
}

/** What to do when a line is hit or the tool is stuck: one tap in the header, one on the card. No sign-in, no signal. */
export function CardsPage() {
  const W = cardPage()
  const { params } = useRoute()
  const chosen = params.card ?? ''
  const crossing = openCrossing.value
  const emergency = crossing === null ? null : emergencyOf(crossing)
  const shown = isCard(chosen) ? chosen : null
  return (
    <main class="cards">
      <h1 class={shown === null ? undefined : 'unseen'}>{W.heading}</h1>
      {shown !== null && <CardShown id={shown} emergency={emergency} />}
      {shown === 'stuck' && (
        <Apart>
          <WhereTheNoseIs crossing={crossing} />
        </Apart>
      )}
      {emergency === null && <p>{W.noCrossing}</p>}
      {emergency !== null && shown === null && <WhereWeAre emergency={emergency} />}
      <nav class="card-doors" aria-label={shown === null ? W.heading : W.others}>
        {CARDS.filter((id) => id !== shown).map((id) => (
          <a key={id} class={`card-door card-door-${id}`} href={`/struck/${id}`}>
            {cards()[id].title}
          </a>
        ))}
      </nav>
      {shown === null && (
        <div class="cards-on-paper">
          {CARDS.map((id) => (
            <CardShown key={id} id={id} emergency={emergency} />
          ))}
        </div>
      )}
      <p class="fine">{W.caution}</p>
      <button type="button" class="quiet" onClick={() => window.print()}>
        {W.print}
      </button>
    </main>
  )
}
