import { z } from 'zod'
import { readCivil } from '../core/digsafe/civil.ts'
import type { SignOff } from '../core/digsafe/release-gate.ts'
import { REOPEN_CAUSES, SIGN_LAYERS } from '../core/digsafe/sign-off-items.ts'
import { day, idOf, nounFile } from './noun-parts.ts'
import { addIssue, choice, shortText } from './quantity-field.ts'

const itemId = z.string().regex(/^[a-z][a-z0-9-]{0,59}$/)
const clockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time of the day such as 07:40')
const sha256 = z.string().regex(/^[0-9a-f]{64}$/, 'a SHA-256 in hexadecimal, small letters')
const plain = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase()

const setAside = z.strictObject({
  code: itemId,
  line: z.number().int().min(1).max(200).optional(),
  reason: z.string().trim().min(8).max(500),
  second: shortText(120),
})

/**
 * Who put their name to what, when, by which version of the plan. It is a record: what it is worth is worked out anew
 * each time it is asked. `layer` reopen: something happened that ends what was signed. `layer` after: what the bore
 * crossed was looked at.
 */
export const signOffFile = nounFile('underlane/sign-off@1', {
  crossing: idOf('the crossing'),
  on: day,
  layer: choice([...SIGN_LAYERS, 'reopen', 'after']),
  by: shortText(120),
  at: clockTime.optional().describe('time of the day on the clock of the place'),
  bore: z.number().int().min(1).max(60).optional(),
  items: z.array(itemId).max(60).optional(),
  photos: z
    .array(z.strictObject({ item: itemId, attachment: idOf('the photo') }))
    .max(60)
    .optional(),
  plan: sha256.optional().describe('version of the plan that was shown'),
  watchers: z.array(shortText(120)).max(60).optional(),
  why: choice(REOPEN_CAUSES).optional(),
  setAside: setAside.optional(),
}).superRefine((given, ctx) => {
  if (given.setAside && plain(given.setAside.second) === plain(given.by)) {
    addIssue(ctx, { code: 'inputs-conflict', accepted: 'two different people' }, ['setAside', 'second'])
  }
})

export type SignOffFile = z.infer<typeof signOffFile>

/** As the gate takes it. One without a time of the day counts from midnight, so that anything later undoes it. */
export function signOffOf(file: SignOffFile): SignOff {
  return {
    layer: file.layer,
    atMinute: readCivil(`${file.on}T${file.at ?? '00:00'}`) ?? 0,
    by: file.by,
    bore: file.bore ?? null,
    items: file.items ?? [],
    photos: (file.photos ?? []).map((each) => each.item),
    plan: file.plan ?? null,
    watchers: file.watchers ?? [],
    why: file.layer === 'reopen' ? (file.why ?? 'other') : null,
    setAside: file.setAside
      ? {
          code: file.setAside.code,
          line: file.setAside.line ?? null,
          reason: file.setAside.reason,
          second: file.setAside.second,
        }
      : null,
  }
}
