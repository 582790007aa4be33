import { z } from 'zod'
import { FOUND_ON_GROUND } from '../core/plan/asked-input.ts'
import type { LocateInput } from '../core/plan/crossing-input.ts'
import { civilDateTime } from './civil-text.ts'
import { choice, orNull, shortText } from './quantity-field.ts'

/** A ticket as printed: it alone says when work may start and when it must stop. */
const ticket = z.strictObject({
  starts: civilDateTime,
  expires: civilDateTime,
  number: orNull(shortText(60)),
  site: orNull(shortText(200)),
  renewBy: orNull(civilDateTime),
})

/** One owner on the ticket. No answer is kept as none: it holds. */
const response = z.strictObject({
  owner: shortText(120),
  answer: orNull(shortText(60)),
  on: orNull(civilDateTime),
  found: orNull(choice(FOUND_ON_GROUND)),
  photo: orNull(shortText(200)),
  phone: orNull(shortText(60)),
})

export const locate = z
  .strictObject({
    jurisdiction: orNull(shortText(60)),
    rulesRead: orNull(z.strictObject({ by: shortText(120), on: civilDateTime })),
    called: orNull(civilDateTime),
    meeting: z.boolean().optional(),
    ticket: orNull(ticket),
    responses: z.array(response).max(100).optional(),
  })
  .transform(
    (l): LocateInput => ({
      jurisdiction: l.jurisdiction,
      rulesRead: l.rulesRead,
      called: l.called,
      meeting: l.meeting ?? false,
      ticket: l.ticket,
      responses: (l.responses ?? []).map((each) => ({ ...each, answer: each.answer ?? '' })),
    }),
  )
