import { z } from 'zod'
import { day, idOf, nounFile } from './noun-parts.ts'

/** A photo from a telephone is a quarter of it. */
export const MOST_ATTACHMENT_BYTES = 20 * 1024 * 1024

/** A photo or a paper that belongs to something. Its bytes are kept apart, under their SHA-256. */
export const attachmentFile = nounFile('underlane/attachment@1', {
  of: idOf('what it belongs to'),
  on: day.optional(),
  mediaType: z
    .string()
    .max(100)
    .regex(/^[a-z]+\/[a-z0-9.+-]+$/, 'a media type such as image/jpeg'),
  byteCount: z.number().int().min(1).max(MOST_ATTACHMENT_BYTES),
  sha256: z.string().regex(/^[0-9a-f]{64}$/, 'a SHA-256 in hexadecimal, small letters'),
})
