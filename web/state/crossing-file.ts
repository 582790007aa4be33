import { type JsonObject, parseObject } from './json.ts'

/** A crossing file the user picked; null when it does not hold one object. */
export const readCrossingFile = async (file: Blob): Promise<JsonObject | null> =>
  parseObject((await file.text()).replace(/^\uFEFF/, ''))

/** The name of a file for a crossing: letters and numbers of its name. */
function fileNameOf(document: JsonObject): string {
  const name = typeof document.name === 'string' ? document.name : ''
  const plain = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
  return `${plain === '' ? 'crossing' : plain.slice(0, 60)}.json`
}

/** Hands the browser a file to keep. */
export function saveFile(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  URL.revokeObjectURL(address)
}

export const saveCrossingFile = (crossing: JsonObject): void =>
  saveFile(fileNameOf(crossing), `${JSON.stringify(crossing, null, 2)}\n`)
