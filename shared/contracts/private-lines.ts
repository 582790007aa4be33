import { z } from 'zod'
import {
  type OverheadInput,
  PRIVATE_ANSWERS,
  PRIVATE_KINDS,
  type PrivateAnswer,
  type PrivateKind,
  type PrivateLinesInput,
} from '../core/plan/asked-input.ts'
import { civilDateTime } from './civil-text.ts'
import { type BareNumbers, choice, orNull, quantity, shortText } from './quantity-field.ts'

const answer = orNull(choice(PRIVATE_ANSWERS, { "don't know": 'unknown', none: 'no' }))
const answers = z.strictObject(
  Object.fromEntries(PRIVATE_KINDS.map((kind) => [kind, answer])) as Record<PrivateKind, typeof answer>,
)
const NONE_ASKED = Object.fromEntries(PRIVATE_KINDS.map((kind) => [kind, null])) as Record<
  PrivateKind,
  PrivateAnswer | null
>

/** Private lines, asked for by name: one-call paints none of them. */
export const privateLines = z
  .strictObject({ by: orNull(shortText(120)), on: orNull(civilDateTime), answers: answers.optional() })
  .transform(
    (given): PrivateLinesInput => ({ by: given.by, on: given.on, answers: given.answers ?? NONE_ASKED }),
  )

/** Lines overhead, which plant keeps away from. */
export const overhead = (bare: BareNumbers) =>
  z
    .array(
      z
        .strictObject({
          station: orNull(quantity('length', bare, { min: -100, max: 1000 })),
          height: orNull(quantity('length', bare, { min: 0, max: 200 })),
          kilovolts: orNull(z.number().min(0).max(2000)),
          owner: orNull(shortText(120)),
        })
        .transform(
          (line): OverheadInput => ({
            stationM: line.station,
            heightM: line.height,
            kilovolts: line.kilovolts,
            owner: line.owner,
          }),
        ),
    )
    .max(50)
