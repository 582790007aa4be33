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

/** As `remember`, for this tab alone: a reload keeps it, and no other tab sees it. null forgets. */
export function rememberHere(key: string, text: string | null): void {
  try {
    if (text === null) sessionStorage.removeItem(key)
    else sessionStorage.setItem(key, text)
  } catch (error) {
    if (!(error instanceof DOMException)) throw error
  }
}

export function recallHere(key: string): string | null {
  try {
    return sessionStorage.getItem(key)
  } catch (error) {
    if (error instanceof DOMException) return null
    throw error
  }
}
