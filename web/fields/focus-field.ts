import type { Path } from '../state/document-path.ts'
import { fieldId } from './field-place.ts'

/** The control for a place of the file, or the nearest one around or within it. */
function controlFor(path: Path): HTMLElement | null {
  const steps = path.split('.')
  for (let length = steps.length; length > 0; length--) {
    const id = fieldId(steps.slice(0, length).join('.'))
    const exact = document.getElementById(id)
    const within = document.querySelector<HTMLElement>(`input[id^="${id}-"], select[id^="${id}-"]`)
    if (exact ?? within) return exact ?? within
  }
  return null
}

/** Brings the field for a place of the file into view, unfolding what hides it. */
export function focusField(path: Path): void {
  const control = controlFor(path)
  if (control === null) return
  for (let at = control.closest('details'); at !== null; at = at.parentElement?.closest('details') ?? null) {
    at.open = true
  }
  control.focus()
}
