import type { ComponentChildren } from 'preact'

type Props = { readonly id: string; readonly heading: string; readonly children: ComponentChildren }

/** One part of the page, named by its heading. */
export function Panel({ id, heading, children }: Props) {
  return (
    <section class="panel" aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`}>{heading}</h2>
      {children}
    </section>
  )
}

/** What most jobs do not need, one tap away. */
export function Folded({
  words,
  children,
}: {
  readonly words: string
  readonly children: ComponentChildren
}) {
  return (
    <details class="folded">
      <summary>{words}</summary>
      <div class="fields">{children}</div>
    </details>
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
export function FoldedPanel({ id, heading, children, inBrief }: Props & { readonly inBrief: string }) {
  return (
    <section class="panel" aria-labelledby={`${id}-heading`}>
      <details class="folded-panel">
        <summary>
          <h2 id={`${id}-heading`}>{heading}</h2> <span class="fine">{inBrief}</span>
        </summary>
        {children}
      </details>
    </section>
  )
}
