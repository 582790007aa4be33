import { SOURCES, type SourceKey } from '../../shared/sources.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { say } from '../state/unit-choice.ts'
import { Citation } from './citation.tsx'

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
          const { standing, use } = SOURCES[key]
          return (
            <li key={key}>
              <Citation source={key} />.{' '}
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
