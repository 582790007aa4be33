/** Which way up a picture is shown: the one thing of a camera's notes that the picture needs. */

const TAG = 0x0112
const SHORT = 3
const UPRIGHT = 1
const ENTRY_BYTES = 12
const FIRST_ENTRIES = 8

/** The orientation, 1 to 8, in a camera's notes (TIFF as in Exif); upright when they do not say, or cannot be read. */
export function orientationIn(tiff: Buffer): number {
  const isLittle = tiff.toString('latin1', 0, 4) === 'II*\0'
  if (!isLittle && tiff.toString('latin1', 0, 4) !== 'MM\0*') return UPRIGHT
  const read16 = (at: number) => (isLittle ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at))
  const read32 = (at: number) => (isLittle ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at))
  if (tiff.length < FIRST_ENTRIES) return UPRIGHT
  const start = read32(4)
  if (start + 2 > tiff.length) return UPRIGHT
  const count = read16(start)
  for (let n = 0; n < count; n++) {
    const at = start + 2 + n * ENTRY_BYTES
    if (at + ENTRY_BYTES > tiff.length) return UPRIGHT
    if (read16(at) !== TAG || read16(at + 2) !== SHORT) continue
    const value = read16(at + 8)
    return value >= 1 && value <= 8 ? value : UPRIGHT
  }
  return UPRIGHT
}

/** Notes that say this and nothing else; null when upright, for then nothing need be said. */
export function orientationNotes(orientation: number): Buffer | null {
  if (orientation === UPRIGHT) return null
  const tiff = Buffer.alloc(FIRST_ENTRIES + 2 + ENTRY_BYTES + 4)
  tiff.write('MM\0*', 0, 'latin1')
  tiff.writeUInt32BE(FIRST_ENTRIES, 4)
  tiff.writeUInt16BE(1, 8)
  tiff.writeUInt16BE(TAG, 10)
  tiff.writeUInt16BE(SHORT, 12)
  tiff.writeUInt32BE(1, 14)
  tiff.writeUInt16BE(orientation, 18)
  return tiff
}
