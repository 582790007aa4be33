import type { ToolCard } from '../../shared/core/shop/tool-card.ts'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import { shown } from '../fields/shown.ts'
import type { ShopTool } from './shop-facts.ts'
import { dayWords, dueWords, holdWords, timeWords } from './shop-said.ts'
import { SHOP } from './shop-words.ts'

type Props = { readonly tool: ShopTool; readonly card: ToolCard }

/** May it go out? By word and shape; a forecast never says no. */
export function IssueLine({ tool, card }: Props) {
  const isHeld = card.holds.length > 0
  const shape = isHeld ? 'stop' : card.tiltOn === null ? 'look' : 'good'
  const open = card.tiltOn === null ? SHOP.card.noTilt : SHOP.card.issue(dayWords(card.tiltOn))
  return (
    <div class={`tool-issue tool-${shape}`}>
      <p class="tool-word">
        <StatusMark shape={shape} />
        <strong>{isHeld ? SHOP.card.hold : open}</strong>
      </p>
      {isHeld && (
        <ul>
          {card.holds.map((reason) => (
            <li key={`${reason.code} ${reason.part}`}>{holdWords(reason, tool)}</li>
          ))}
        </ul>
      )}
    </div>
  )
}

/** The default face of a tool: what it has done, and what is due. Statistics are one tap behind. */
export function ToolFace({ tool, card }: Props) {
  const { complaint } = tool.file
  const due = card.due.flatMap((code) => dueWords(code, card, tool))
  const W = SHOP.card
  const rows: readonly (readonly [string, string])[] = [
    [W.bored, shown(card.lengthM, 'length')],
    [W.hours, timeWords(card.hammerS)],
    [W.bores, String(card.boreCount)],
    [W.lastStrip, card.lastStripOn === null ? W.never : dayWords(card.lastStripOn)],
    [W.sinceStrip, timeWords(card.sinceStripS)],
    [W.complaint, complaint === undefined ? W.noComplaint : `${complaint.words} (${dayWords(complaint.on)})`],
  ]
  return (
    <>
      <IssueLine tool={tool} card={card} />
      <dl class="tool-figures">
        {rows.map(([term, said]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{said}</dd>
          </div>
        ))}
      </dl>
      <div class="tool-due">
        <p class="tool-word">
          {due.length > 0 && <StatusMark shape="look" />}
          <strong>{W.due}:</strong> {due.length === 0 && W.nothingDue}
        </p>
        {due.length > 0 && (
          <ul>
            {due.map((each) => (
              <li key={each}>{each}</li>
            ))}
          </ul>
        )}
      </div>
    </>
  )
}
