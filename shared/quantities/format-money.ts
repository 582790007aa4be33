/** Decimals of the currencies that do not have two (ISO 4217). */
const DECIMALS: Readonly<Record<string, number>> = {
  JPY: 0,
  KRW: 0,
  CLP: 0,
  ISK: 0,
  VND: 0,
  KWD: 3,
  BHD: 3,
  TND: 3,
}
const SIGNS: Readonly<Record<string, string>> = {
  USD: '$',
  GBP: '£',
  EUR: '€',
  CAD: 'CA$',
  AUD: 'A$',
  MXN: 'MX$',
}

/**
 * Money for people, rounded to the rate book's step (both in minor units: cents, pence); thousands with commas:
 * 184250 USD at a step of 500 → `$1,845`. Cents are shown only where the step is finer than a whole unit.
 */
export function formatMoney(minorUnits: number, currency: string, step = 1): string {
  if (!Number.isFinite(minorUnits)) return '—'
  const code = currency.toUpperCase()
  const decimals = DECIMALS[code] ?? 2
  const unit = 10 ** decimals
  const grain = step > 0 && Number.isFinite(step) ? step : 1
  const rounded = Math.round(Math.round(Math.abs(minorUnits) / grain) * grain)
  const whole = String(Math.floor(rounded / unit)).replace(/\B(?=(?:\d{3})+$)/g, ',')
  const minor = String(rounded % unit).padStart(decimals, '0')
  const shown = decimals === 0 || grain % unit === 0 ? whole : `${whole}.${minor}`
  const sign = minorUnits < 0 && rounded > 0 ? '-' : ''
  const prefix = SIGNS[code] ?? `${code} `
  return `${sign}${prefix}${shown}`
}
