import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { planToKeep } from '../plan-to-keep.ts'
import { shopDemo } from './demo-shop.ts'
import { NOUNS } from './nouns.ts'
import type { Stores } from './open-store.ts'

/** Ids of demo crossings are made from the file's name in this namespace (RFC 9562, version 5), so they never change. */
const DEMO_NAMESPACE = '6f2c1d8e-3b5a-5e47-9c60-a1d4b7e92f35'

export function demoId(fileName: string): string {
  const hash = createHash('sha1')
  hash.update(Buffer.from(DEMO_NAMESPACE.replaceAll('-', ''), 'hex')).update(fileName)
  const bytes = hash.digest().subarray(0, 16)
  bytes.writeUInt8((bytes.readUInt8(6) & 0x0f) | 0x50, 6)
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8)
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')
}

/**
 * Puts every crossing file of the folder into the store. Done again it changes nothing: what a user has altered or
 * removed stays so.
 */
export async function seedDemo(stores: Stores, folder: string, at: Date): Promise<void> {
  if (!existsSync(folder)) return
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'))
  for (const file of files.sort()) {
    const id = demoId(file)
    // Once put in, a crossing has a history, removed or not; planning it again would only be slow.
    const known = await stores.crossings.history(id, { after: null, limit: 1 })
    if (known.items.length > 0) continue
    const document = NOUNS.crossings.read(JSON.parse(readFileSync(join(folder, file), 'utf8')))
    const made = planToKeep(document)
    const act = { who: 'demo', at, from: 'seed', requestKey: null }
    await stores.crossings.insert({ id, document, made: made.ok ? made.value : null, demo: true }, act)
  }
  await seedShop(stores, at)
}

/** The invented shop, the same way; it belongs to the crossings of the folder. */
async function seedShop(stores: Stores, at: Date): Promise<void> {
  for (const { noun, key, document } of shopDemo(at, demoId)) {
    const id = demoId(key)
    const known = await stores[noun].history(id, { after: null, limit: 1 })
    if (known.items.length > 0) continue
    const act = { who: 'demo', at, from: 'seed', requestKey: null }
    await stores[noun].insert({ id, document, made: null, demo: true }, act)
  }
}
