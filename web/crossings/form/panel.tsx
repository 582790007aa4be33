import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'

type Props = { readonly id: string; readonly heading: string; readonly children: ComponentChildren }

/** One part of the page, named by its heading; the focus goes to that with whoever jumps there. */
export function Panel({ id, heading, children }: Props) {
  return (
    <section class="panel" aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`} tabIndex={-1}>
        {heading}
      </h2>
      {children}
    </section>
  )
}

/** What most jobs do not need, one tap away. */
export function Folded({
  words,
  isOpen = false,
  children,
}: {
  readonly words: string
  readonly isOpen?: boolean
  readonly children: ComponentChildren
}) {
  return (
    <details class="folded" open={isOpen}>
      <summary>{words}</summary>
      <div class="fields">{children}</div>
    </details>
  )
}

/** Wide enough for form and answers side by side; asked once, for a part opened or closed since stays so. */
export const isWideScreen = (): boolean => matchMedia('(min-width: 62.5rem)').matches

/** A part that is open where there is room, and one tap away on a telephone. */
export function RoomyPanel({ id, heading, children, inBrief }: Props & { readonly inBrief: string }) {
  const [isOpen] = useState(isWideScreen)
  return (
    <FoldedPanel id={id} heading={heading} inBrief={inBrief} isOpen={isOpen}>
      {children}
    </FoldedPanel>
  )
}

/** A list that most jobs leave empty. */
export const FoldedList = ({
  words,
  isOpen,
  children,
}: {
  readonly words: string
  readonly isOpen: boolean
  readonly children: ComponentChildren
}) => (
  <details class="folded" open={isOpen}>
    <summary>{words}</summary>
    {children}
  </details>
)

/** A part that few need each time: its heading and what is in it in a word, the rest one tap away. */
type FoldedProps = Props & {
  readonly inBrief: string
  readonly isOpen?: boolean
  /** Told each time it is opened or closed. */
  readonly onOpen?: (isOpen: boolean) => void
}

export function FoldedPanel({ id, heading, children, inBrief, isOpen = false, onOpen }: FoldedProps) {
  return (
    <section class="panel" aria-labelledby={`${id}-heading`}>
      <details class="folded-panel" open={isOpen} onToggle={(event) => onOpen?.(event.currentTarget.open)}>
        <summary>
          <h2 id={`${id}-heading`}>{heading}</h2> <span class="fine">{inBrief}</span>
        </summary>
        {children}
      </details>
    </section>
  )
}
