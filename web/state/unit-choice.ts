import { computed, signal } from '@preact/signals'
import type { UnitSystem } from '../../shared/quantities/format-quantity.ts'
import type { Say } from '../../shared/text/language.ts'
import { recall, remember } from './browser-memory.ts'
import { language } from './language-choice.ts'

const KEY = 'underlane.units'

/** In which units answers are shown; what is typed may be in either. */
export const units = signal<UnitSystem>(recall(KEY) === 'si' ? 'si' : 'us')

export function chooseUnits(system: UnitSystem): void {
  units.value = system
  remember(KEY, system)
}

/** To whom sentences are said. */
export const say = computed((): Say => ({ lang: language.value, system: units.value }))
