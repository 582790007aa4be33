import { computed, effect, signal } from '@preact/signals'
import { recall, remember } from './browser-memory.ts'

const KEY = 'underlane.theme'

export const THEMES = ['system', 'light', 'dark', 'sun'] as const
export type Theme = (typeof THEMES)[number]

const isTheme = (text: string | null): text is Theme => THEMES.some((theme) => theme === text)

const keptTheme = (): Theme => {
  const kept = recall(KEY)
  return isTheme(kept) ? kept : 'system'
}

export const theme = signal<Theme>(keptTheme())
const isDeviceDark = signal(false)

/** What the choice comes to on this device, now. */
const shownTheme = computed(() =>
  theme.value !== 'system' ? theme.value : isDeviceDark.value ? 'dark' : 'light',
)

export function chooseTheme(chosen: Theme): void {
  theme.value = chosen
  remember(KEY, chosen)
}

/** Follows the choice and the device from here on. */
export function followTheme(): void {
  const device = matchMedia('(prefers-color-scheme: dark)')
  isDeviceDark.value = device.matches
  device.addEventListener('change', () => {
    isDeviceDark.value = device.matches
  })
  effect(() => {
    document.documentElement.dataset.theme = shownTheme.value
  })
}
