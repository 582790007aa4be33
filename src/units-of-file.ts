/** Units that only one of the two systems writes. */
const METRIC = /\d\s*(mm|cm|m|km|bar|kPa|MPa|m3\/min|L\/min|L\/s|°C|C)$/
const US = /\d\s*(ft|in|yd|psi|cfm|F|°F|["'′″’”])/

/** The system a crossing file is written in: what most of its own quantities are in; US where it is even. */
export function unitsOfFile(document: unknown): 'us' | 'si' {
  let metric = 0
  let us = 0
  const walk = (value: unknown, depth: number): void => {
    if (depth > 8) return
    if (typeof value === 'string') {
      if (METRIC.test(value)) metric++
      else if (US.test(value)) us++
    } else if (value !== null && typeof value === 'object') {
      for (const inner of Object.values(value)) walk(inner, depth + 1)
    }
  }
  if (document !== null && typeof document === 'object' && 'units' in document) {
    if (document.units === 'si' || document.units === 'us') return document.units
  }
  walk(document, 0)
  return metric > us ? 'si' : 'us'
}
