import { readCivil } from '../../shared/core/digsafe/civil.ts'

const two = (value: number): string => String(value).padStart(2, '0')

/** The clock of the place, as a ticket is printed: this device's own day and time. */
export function civilNow(at: Date): { readonly day: string; readonly time: string; readonly minute: number } {
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
  const time = `${two(at.getHours())}:${two(at.getMinutes())}`
  return { day, time, minute: readCivil(`${day}T${time}`) ?? 0 }
}
