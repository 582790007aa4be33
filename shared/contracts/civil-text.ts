import { z } from 'zod'
import { readCivil } from '../core/digsafe/civil.ts'

export const CIVIL_NOTATION = 'a date like 2026-03-02 or a date and time like 2026-03-02T09:10'

/** A day and hour that are in the calendar; no zone, no clock: as printed on a ticket. */
export const civilDateTime = z
  .string()
  .max(32)
  .refine((text) => readCivil(text) !== null, { error: CIVIL_NOTATION })

const WITH_OFFSET = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2})$/

/** A moment everywhere in the world, not a time on one clock. */
export const hasOffset = (text: string): boolean => WITH_OFFSET.test(text)

/** That moment on the clock of a zone; null for a moment or a zone that is none. The only place a zone is known. */
export function civilInZone(moment: string, zone: string): string | null {
  const instant = new Date(moment)
  if (!hasOffset(moment) || Number.isNaN(instant.getTime())) return null
  try {
    const parts = new Intl.DateTimeFormat('en-CA', {
      timeZone: zone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
    }).formatToParts(instant)
    const part = (type: string) => parts.find((each) => each.type === type)?.value ?? ''
    const text = `${part('year')}-${part('month')}-${part('day')}T${part('hour')}:${part('minute')}`
    return readCivil(text) === null ? null : text
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}
