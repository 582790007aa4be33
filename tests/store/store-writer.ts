import { writeSync } from 'node:fs'
import { openStore } from '../../src/store/open-store.ts'

/**
 * A program of its own, to be killed while it writes: inserts crossings, replaces each once, and says each change on
 * stdout only after the store has acknowledged it. Arguments: folder, number of the first crossing, address of the database if there is one.
 */
const [folder = '', first = '0', databaseUrl = null] = process.argv.slice(2)
const store = await openStore(folder, databaseUrl)
const act = { who: 'writer', at: new Date('2026-03-02T09:00:00Z'), from: 'test', requestKey: null }
for (let n = Number(first); ; n++) {
  const id = `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`
  await store.crossings.insert({ id, document: { name: `first ${n}` }, made: null, demo: false }, act)
  writeSync(1, `${id} 1\n`)
  await store.crossings.replace(
    { id, document: { name: `second ${n}` }, made: null, expectedVersion: 1 },
    act,
  )
  writeSync(1, `${id} 2\n`)
}
