import { useEffect, useState } from 'preact/hooks'
import { formatQuantity } from '../../shared/quantities/format-quantity.ts'
import { type PipeNote, parsePipeNote } from '../../shared/quantities/parse-trade.ts'
import { pipeNameOf } from '../../shared/text/pipe-name.ts'
import { type Path, textAt, valueAt } from '../state/document-path.ts'
import type { Json, JsonObject } from '../state/json.ts'
import { say } from '../state/unit-choice.ts'
import { FIELD_WORDS } from '../words/field-words.ts'
import { describedBy, FieldFrame } from './field-frame.tsx'
import { type FieldPlace, fieldId } from './field-place.ts'
import { keepUnread, unreadAt } from './unread-note.ts'

/** Digits enough that a size given to a thousandth of an inch comes back as it was given. */
const DIGITS = 7

function outsideDiameterText(metres: number, note: string): string {
  const unit = /mm|cm/.test(note) ? 'mm' : 'in'
  return formatQuantity(metres, 'diameter', 'si', { unit, digits: DIGITS })
}

function changesFrom(
  path: Path,
  note: PipeNote,
  text: string,
): readonly (readonly [Path, Json | undefined])[] {
  const outside = note.system === null ? note.outsideDiameterM : null
  return [
    [`${path}.system`, note.system ?? undefined],
    [`${path}.size`, note.size ?? undefined],
    [`${path}.sdr`, note.dimensionRatio ?? undefined],
    [`${path}.wall`, note.wall ?? undefined],
    [`${path}.outsideDiameter`, outside === null ? undefined : outsideDiameterText(outside, text)],
    ...(note.count > 1 ? [[`${path}.count`, note.count] as const] : []),
  ]
}

/** The pipe the file holds, in words. */
function pipeInWords(document: JsonObject, path: Path): string {
  const at = (key: string) => textAt(document, `${path}.${key}`)
  const wall = at('wall') || (at('sdr') === '' ? '' : `SDR ${at('sdr')}`)
  const named = pipeNameOf({ system: at('system'), size: at('size'), wall }, say.value)
  return named ?? [at('size') || at('outsideDiameter'), wall].filter((each) => each !== '').join(', ')
}

/** A pipe as it is noted on a job sheet; what was understood is written into the fields of the file. */
export function PipeNoteField({ model, path, label, hint }: FieldPlace) {
  const id = fieldId(`${path}.note`)
  const pipe = () => valueAt(model.document.peek(), path)
  const [text, setText] = useState(() => unreadAt(path, pipe()))
  const [isLeft, setLeft] = useState(text !== '')
  const note = text.trim() === '' ? null : parsePipeNote(text)
  const read = (typed: string) => {
    setText(typed)
    const parsed = typed.trim() === '' ? null : parsePipeNote(typed)
    if (parsed?.ok) model.setAll(changesFrom(path, parsed, typed))
    keepUnread(path, parsed === null || parsed.ok ? null : typed, pipe())
  }
  const issues = isLeft && note !== null && !note.ok ? [{ ...note.issue, path: `${path}.note` }] : []
  const isUnread = issues.length > 0
  // The crossing has another pipe than what stands here: its answers are of before.
  useEffect(() => {
    const [issue] = issues
    model.markUnread(`${path}.note`, issue ?? null)
    return () => model.markUnread(`${path}.note`, null)
  }, [model, path, isUnread, text])
  const inFile = pipeInWords(model.document.value, path)
  // While what stands here is not read, the pipe of the file is another one.
  const isOther = inFile !== '' && note !== null && !note.ok
  const reading = isOther ? (isLeft ? FIELD_WORDS.planKeeps(inFile) : null) : inFile
  return (
    <FieldFrame
      id={id}
      label={label}
      hint={hint}
      reading={reading === '' ? null : reading}
      issues={issues}
      onTake={read}
    >
      <input
        id={id}
        type="text"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        value={text}
        placeholder="3/4 K"
        aria-describedby={describedBy(id)}
        aria-invalid={issues.length > 0}
        onInput={(event) => {
          setLeft(false)
          read(event.currentTarget.value)
        }}
        onBlur={() => setLeft(true)}
      />
    </FieldFrame>
  )
}
