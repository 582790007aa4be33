import { SOURCES, type SourceKey } from '../../shared/sources.ts'
import { sourceWords } from '../../shared/text/relation-words.ts'
import { say } from '../state/unit-choice.ts'

/** Where something is from: a publication as it is printed, whatever the reader's language. */
export function Citation({ source }: { readonly source: SourceKey }) {
  const { text, lang } = sourceWords(source, SOURCES[source].citation, say.value.lang)
  return <span lang={lang}>{text}</span>
}
