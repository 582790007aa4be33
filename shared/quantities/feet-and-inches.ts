/** Fractions a tape shows: reduces 4/16 to 1/4. */
function reduced(top: number, bottom: number): string {
  let numerator = top
  let denominator = bottom
  while (numerator % 2 === 0 && denominator % 2 === 0) {
    numerator /= 2
    denominator /= 2
  }
  return `${numerator}/${denominator}`
}

/** Inches to the nearest `1/parts`: 1.25 → `1-1/4 in`, 0.75 → `3/4 in`. `parts` is a power of two. */
export function inchesText(inches: number, parts: number): string {
  const steps = Math.round(Math.abs(inches) * parts)
  const sign = inches < 0 && steps > 0 ? '-' : ''
  const whole = Math.floor(steps / parts)
  const rest = steps % parts
  if (rest === 0) return `${sign}${whole} in`
  return whole === 0 ? `${sign}${reduced(rest, parts)} in` : `${sign}${whole}-${reduced(rest, parts)} in`
}

/** Feet, inches and fractions as a tape is read: 55.2 in → `4 ft 7-1/4 in`; 504 in → `42 ft`; 9 in → `9 in`. */
export function feetAndInchesText(inches: number, parts: number): string {
  const steps = Math.round(Math.abs(inches) * parts)
  const sign = inches < 0 && steps > 0 ? '-' : ''
  const feet = Math.floor(steps / (12 * parts))
  const rest = steps - feet * 12 * parts
  if (feet === 0) return `${sign}${inchesText(rest / parts, parts)}`
  return rest === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${inchesText(rest / parts, parts)}`
}
