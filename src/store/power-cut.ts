import { sql } from 'kysely'
import { openDatabase, type StorePlace } from './open-store.ts'

/** Settings of the whole server, which no connection of ours can put right. */
const WANTED_ON = ['fsync', 'full_page_writes'] as const

/**
 * What a power cut could take although it was acknowledged: the settings an administrator has switched off for speed, as
 * a sentence; null where there is nothing to say.
 */
export async function powerCutWarning(place: StorePlace): Promise<string | null> {
  if (place.databaseUrl === null) return null
  const database = await openDatabase(place)
  try {
    const off: string[] = []
    for (const name of WANTED_ON) {
      const { rows } = await sql<{ value: string }>`select current_setting(${name}) as value`.execute(
        database.queries,
      )
      if (rows[0]?.value === 'off') off.push(name)
    }
    return off.length === 0
      ? null
      : `${database.place} runs with ${off.join(' and ')} off: a power cut can take what it has said is kept. Switch it on.`
  } catch (error) {
    throw database.worldError(error)
  } finally {
    await database.queries.destroy()
  }
}
