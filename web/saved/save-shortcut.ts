import { useEffect, useRef } from 'preact/hooks'

/** A field hands on what was half typed when it is left. */
function handOnTyped(): void {
  const field = document.activeElement
  if (!(field instanceof HTMLInputElement)) return
  field.blur()
  field.focus()
}

/** Ctrl+S, or the command key, saves here and not the page as a file; what is half typed is handed on before leaving. */
export function useSaveShortcut(save: () => void): void {
  const latest = useRef(save)
  latest.current = save
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const isSave = (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 's'
      if (!isSave) return
      event.preventDefault()
      handOnTyped()
      latest.current()
    }
    addEventListener('keydown', onKey)
    addEventListener('pagehide', handOnTyped)
    return () => {
      removeEventListener('keydown', onKey)
      removeEventListener('pagehide', handOnTyped)
    }
  }, [])
}
