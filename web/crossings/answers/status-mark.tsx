type Shape = 'stop' | 'look' | 'note' | 'good'

const PATHS: Readonly<Record<Shape, { readonly outline: string; readonly sign: string }>> = {
  stop: { outline: 'M8 2h8l6 6v8l-6 6H8l-6-6V8z', sign: 'M7 12h10' },
  look: { outline: 'M12 2.5 22.5 21h-21z', sign: 'M12 9v6M12 17.4v1' },
  note: { outline: 'M12 2a10 10 0 1 0 0 20 10 10 0 0 0 0-20z', sign: 'M12 10.5V17M12 7v1' },
  good: { outline: 'M12 2a10 10 0 1 0 0 20 10 10 0 0 0 0-20z', sign: 'm7 12.5 3.5 3.5L17 9' },
}

/** A shape beside a word, so that neither colour nor sight of it is needed. */
export function StatusMark({ shape }: { readonly shape: Shape }) {
  const { outline, sign } = PATHS[shape]
  return (
    <svg class={`mark mark-${shape}`} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={outline} class="mark-outline" />
      <path d={sign} class="mark-sign" />
    </svg>
  )
}
