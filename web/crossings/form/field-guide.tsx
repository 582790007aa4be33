import { SPANISH_SOIL_WORDS } from '../../../shared/tables/trade-soil-words-es.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { type Path, valueAt } from '../../state/document-path.ts'
import { say } from '../../state/unit-choice.ts'
import { GUIDE } from '../../words/guide-words.ts'
import { consistencies } from '../../words/option-words.ts'
import { GUIDE_TESTS, GuideDrawing, type GuideTest } from './guide-drawings.tsx'
import { FoldedList } from './panel.tsx'

type Props = { readonly model: CrossingModel; readonly path: Path }

/** What each sign sets, in the order the words give the signs: how hard, or the word for the ground. */
const SETS: Readonly<Record<GuideTest, { readonly key: string; readonly values: readonly string[] }>> = {
  thumb: { key: 'consistency', values: ['very soft', 'soft', 'firm', 'stiff', 'very stiff', 'hard'] },
  ribbon: { key: 'word', values: ['clay', 'clay loam', 'sandy loam'] },
  dry: { key: 'word', values: ['sand', 'silt', 'clay'] },
}

/** What is put into the form: a word for the ground in the reader's own, a consistency as files have it. */
const inForm = (key: string, value: string): string =>
  key === 'word' && say.value.lang === 'es' ? (SPANISH_SOIL_WORDS[value]?.[0] ?? value) : value
const nameOf = (value: string): string => consistencies().find(([each]) => each === value)?.[1] ?? value

function Test({ model, path, test }: Props & { readonly test: GuideTest }) {
  const words = GUIDE[test]
  const { key, values } = SETS[test]
  const now = valueAt(model.document.value, `${path}.${key}`)
  return (
    <section aria-label={words.heading}>
      <h3>{words.heading}</h3>
      <GuideDrawing test={test} />
      <p>{words.how}</p>
      <ul class="guide-signs">
        {values
          .map((value) => inForm(key, value))
          .map((value, at) => (
            <li key={value}>
              {words.signs[at]}{' '}
              <button
                type="button"
                class="quiet"
                aria-pressed={now === value}
                onClick={() => model.set(`${path}.${key}`, value)}
              >
                {GUIDE.use} {nameOf(value)}
              </button>
            </li>
          ))}
      </ul>
      <p class="fine">{words.standing}</p>
    </section>
  )
}

/** Three tests of the hand, for where nobody has measured. A tap takes what is seen into the stretch. */
export function FieldGuide({ model, path }: Props) {
  return (
    <FoldedList words={GUIDE.summary} isOpen={false}>
      <p>{GUIDE.why}</p>
      {GUIDE_TESTS.map((test) => (
        <Test key={test} model={model} path={path} test={test} />
      ))}
    </FoldedList>
  )
}
