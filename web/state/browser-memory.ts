/** What this browser remembers; a browser that refuses (private windows, full disk) simply does not. */
export function remember(key: string, text: string): boolean {
  try {
    localStorage.setItem(key, text)
    return true
  } catch (error) {
    if (error instanceof DOMException) return false
    throw error
  }
}

export function recall(key: string): string | null {
  try {
    return localStorage.getItem(key)
  } catch (error) {
    if (error instanceof DOMException) return null
    throw error
  }
}
