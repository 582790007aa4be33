/** A random UUID (version 4). Not `crypto.randomUUID`: a page served by a machine in the shop, without TLS, has none. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  const hex = Array.from(bytes, (byte, place) => {
    const marked = place === 6 ? (byte & 0x0f) | 0x40 : place === 8 ? (byte & 0x3f) | 0x80 : byte
    return marked.toString(16).padStart(2, '0')
  }).join('')
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, '$1-$2-$3-$4-')
}
