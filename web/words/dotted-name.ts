/** 'clearance.exposureError' as words: 'clearance: exposure error'; numbers count from one, as people do. */
export function wordsOfDottedName(name: string): string {
  const parts = name
    .split('.')
    .map((part) =>
      /^\d+$/.test(part) ? String(Number(part) + 1) : part.replace(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`),
    )
  const [first = '', ...rest] = parts
  const [place, ...more] = rest
  const head = place !== undefined && /^\d+$/.test(place) ? `${first} ${place}` : first
  const tail = place !== undefined && /^\d+$/.test(place) ? more : rest
  return tail.length === 0 ? head : `${head}: ${tail.join(' ')}`
}
