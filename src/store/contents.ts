import { createHash } from 'node:crypto'
import type { Database } from './database.ts'

/** The bytes of attachments, each kept once under its hash. Nothing is ever written over. */
export type Contents = {
  /** Kept when this is answered; its hash. */
  put(bytes: Uint8Array): Promise<string>
  find(sha256: string): Promise<Buffer | null>
}

export function createContents({ queries, worldError }: Database): Contents {
  const guarded = <Answer>(work: Promise<Answer>): Promise<Answer> =>
    work.catch((error: unknown) => {
      throw worldError(error)
    })
  return {
    async put(bytes) {
      const sha256 = createHash('sha256').update(bytes).digest('hex')
      const base64 = Buffer.from(bytes).toString('base64')
      const write = queries
        .insertInto('content')
        .values({ sha256, byte_count: bytes.length, base64 })
        .onConflict((conflict) => conflict.column('sha256').doNothing())
        .execute()
      await guarded(write)
      return sha256
    },
    async find(sha256) {
      const read = queries
        .selectFrom('content')
        .select('base64')
        .where('sha256', '=', sha256)
        .executeTakeFirst()
      const row = await guarded(read)
      return row === undefined ? null : Buffer.from(row.base64, 'base64')
    },
  }
}
