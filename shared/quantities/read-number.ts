/** A number as people write it: 42, .5, 1.2e3, 3/4, 1-1/4, 1 1/4. Always without its sign. */
export const NUMBER = String.raw`(?:\d+(?:\s*-\s*|\s+)\d+\/\d+|\d+\/\d+|(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)`

export type ReadNumber =
  | { readonly read: 'number'; readonly value: number; readonly decimal: boolean }
  /** 11/4 may be one and a quarter with the hyphen left out. */
  | { readonly read: 'unclear-fraction'; readonly mixed: string; readonly decimal: string }
  | { readonly read: 'zero-denominator' }
  | { readonly read: 'not-finite' }
  | { readonly read: 'nothing' }

const MIXED = /^(\d+)(?:\s*-\s*|\s+)(\d+)\/(\d+)$/
const FRACTION = /^(\d+)\/(\d+)$/
const DECIMAL = /^(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/

export function readNumber(text: string): ReadNumber {
  const mixed = MIXED.exec(text)
  if (mixed) {
    const [, whole, top, bottom] = mixed
    return fraction(Number(whole), Number(top), Number(bottom))
  }
  const plain = FRACTION.exec(text)
  if (plain) {
    const [, top = '', bottom = ''] = plain
    return hyphenLeftOut(top, bottom) ?? fraction(0, Number(top), Number(bottom))
  }
  if (!DECIMAL.test(text)) return { read: 'nothing' }
  return finite(Number(text), /[.eE]/.test(text))
}

function finite(value: number, decimal: boolean): ReadNumber {
  return Number.isFinite(value) ? { read: 'number', value, decimal } : { read: 'not-finite' }
}

function fraction(whole: number, top: number, bottom: number): ReadNumber {
  return bottom === 0 ? { read: 'zero-denominator' } : finite(whole + top / bottom, false)
}

/** `11/4`: the last digit or two would make a proper fraction of the kind a rule has (halves to sixty-fourths). */
function hyphenLeftOut(top: string, bottom: string): ReadNumber | null {
  if (!['2', '4', '8', '16', '32', '64'].includes(bottom) || Number(top) <= Number(bottom)) return null
  for (const digits of [2, 1]) {
    const whole = top.slice(0, -digits)
    const rest = top.slice(-digits)
    const odd = Number(rest) % 2 === 1
    if (whole === '' || rest.startsWith('0') || !odd || Number(rest) >= Number(bottom)) continue
    return {
      read: 'unclear-fraction',
      mixed: `${Number(whole)}-${rest}/${bottom}`,
      decimal: String(Number(top) / Number(bottom)),
    }
  }
  return null
}
