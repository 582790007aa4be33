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
