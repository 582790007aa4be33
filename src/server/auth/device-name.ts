const LONGEST = 60

const SYSTEMS = [
  [/iPhone/, 'iPhone'],
  [/iPad/, 'iPad'],
  [/Android/, 'Android'],
  [/CrOS/, 'ChromeOS'],
  [/Windows/, 'Windows'],
  [/Mac OS X|Macintosh/, 'Mac'],
  [/Linux/, 'Linux'],
] as const

const BROWSERS = [
  [/Edg\//, 'Edge'],
  [/Firefox\/|FxiOS/, 'Firefox'],
  [/Chrome\/|CriOS/, 'Chrome'],
  [/Safari\//, 'Safari'],
] as const

/** By which somebody knows their device in a list; a program that says neither is called by its first word. */
export function deviceName(userAgent: string | undefined): string {
  const given = userAgent ?? ''
  const found = [SYSTEMS, BROWSERS].map((names) => names.find(([sign]) => sign.test(given))?.[1])
  const named = found.filter((name) => name !== undefined).join(', ')
  const first = /^[\w./-]+/.exec(given)?.[0] ?? '?'
  return (named === '' ? first : named).slice(0, LONGEST)
}
