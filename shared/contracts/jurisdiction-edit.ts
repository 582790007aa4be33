import { z } from 'zod'
import type { JurisdictionEdit } from '../core/digsafe/edited-row.ts'
import { JURISDICTION_IDS } from '../tables/jurisdiction-ids.ts'
import type { Notice } from '../tables/jurisdictions.ts'
import { day } from './noun-parts.ts'
import { choice, orNull, quantity, shortText } from './quantity-field.ts'

const days = z.number().int().min(0).max(400)

/** A number of days, or of hours for clock hours, and which of the four ways it is counted. */
const notice = z
  .strictObject({
    family: choice(['full-days', 'nth-day', 'from-next-opening', 'clock-hours']),
    count: z.number().int().min(1).max(400),
  })
  .transform(({ family, count }): Notice => {
    if (family === 'full-days') return { family, days: count, startsOn: 'business-day' }
    if (family === 'nth-day') return { family, day: count }
    return family === 'from-next-opening' ? { family, days: count } : { family, hours: count }
  })

/** What a firm has corrected of a place's locate rules: who, on which day, why. Shown wherever the rules are. */
export const jurisdictionEdit = z
  .strictObject({
    id: choice(JURISDICTION_IDS),
    on: day,
    by: shortText(120),
    why: orNull(shortText(500)),
    notice: orNull(notice),
    lifeDays: orNull(z.strictObject({ count: days, of: choice(['business', 'calendar']) })),
    renewDaysBefore: orNull(days),
    zone: orNull(quantity('length', 'refuse', { min: 0.05, max: 10 })),
    holidays: z.array(day).max(100).optional(),
    checkedOn: orNull(day),
  })
  .transform(
    ({ zone, holidays, ...edit }): JurisdictionEdit => ({ ...edit, zoneM: zone, holidays: holidays ?? [] }),
  )
