/** Enough to read a tape by, and small enough to keep until there is signal. */
const MOST_PX = 1000
const QUALITY = 0.7

/** A photo from the camera as a small JPEG in a data address; null for what is no picture. */
export async function smallPhoto(file: Blob): Promise<string | null> {
  const picture = await createImageBitmap(file).catch(() => null)
  if (picture === null) return null
  const share = Math.min(1, MOST_PX / Math.max(picture.width, picture.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(picture.width * share))
  canvas.height = Math.max(1, Math.round(picture.height * share))
  const drawing = canvas.getContext('2d')
  if (drawing === null) return null
  drawing.drawImage(picture, 0, 0, canvas.width, canvas.height)
  picture.close()
  return canvas.toDataURL('image/jpeg', QUALITY)
}
