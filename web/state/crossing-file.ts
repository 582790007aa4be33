import { type JsonObject, parseObject } from './json.ts'

/** A crossing file the user picked; null when it does not hold one object. */
export const readCrossingFile = async (file: Blob): Promise<JsonObject | null> =>
  parseObject((await file.text()).replace(/^\uFEFF/, ''))

/** The name of a file for a crossing: letters and numbers of its name. */
export function fileNameOf(document: JsonObject, ending = 'json'): string {
  const name = typeof document.name === 'string' ? document.name : ''
  const plain = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
  return `${plain === '' ? 'crossing' : plain.slice(0, 60)}.${ending}`
}

/** Hands the browser a file to keep. */
export function saveFile(name: string, text: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  URL.revokeObjectURL(address)
}

export const saveCrossingFile = (crossing: JsonObject): void =>
  saveFile(fileNameOf(crossing), `${JSON.stringify(crossing, null, 2)}\n`)
