/** A generator of its own, so that the judge shares nothing with the judged. */
export function normals(seed: number): () => number {
  let state = seed >>> 0
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return (((t ^ (t >>> 14)) >>> 0) + 0.5) / 4294967296
  }
  let spare: number | null = null
  return () => {
    if (spare !== null) {
      const kept = spare
      spare = null
      return kept
    }
    const radius = Math.sqrt(-2 * Math.log(uniform()))
    const angle = 2 * Math.PI * uniform()
    spare = radius * Math.sin(angle)
    return radius * Math.cos(angle)
  }
}

/**
 * One plane of one bore, walked step by step: the heading starts out of aim and is turned a little by every step of
 * ground; the offset is what the heading adds up to. No covariance, no matrix.
 */
export function walk(
  normal: () => number,
  aimRad: number,
  drift: number,
  lengthM: number,
  steps: number,
): Float64Array {
  const stepM = lengthM / steps
  const places = new Float64Array(steps + 1)
  let heading = aimRad * normal()
  let y = 0
  for (let step = 1; step <= steps; step++) {
    // The turn of a step and how its middle leads its end: both parts of the same random turn.
    const turn = drift * Math.sqrt(stepM) * normal()
    const lead = (drift * stepM * Math.sqrt(stepM) * normal()) / Math.sqrt(12)
    y += heading * stepM + (turn * stepM) / 2 + lead
    heading += turn
    places[step] = y
  }
  return places
}
