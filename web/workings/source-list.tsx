import { SOURCES, type SourceKey } from '../../shared/sources.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { say } from '../state/unit-choice.ts'

export function SourceList({
  heading,
  sources,
}: {
  readonly heading: string
  readonly sources: readonly SourceKey[]
}) {
  return (
    <div class="sources">
      <p class="sources-heading">{heading}</p>
      <ul>
        {sources.map((key) => {
          const { citation, standing, use } = SOURCES[key]
          return (
            <li key={key}>
              <span lang="en">{citation}</span>.{' '}
              <span class="standing">{planWord('standing', standing, say.value)}</span>{' '}
              <span class="fine" lang="en">
                {use}
              </span>
            </li>
          )
        })}
      </ul>
    </div>
  )
}
