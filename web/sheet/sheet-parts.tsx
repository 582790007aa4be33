import type { ComponentChildren } from 'preact'
import { say } from '../state/unit-choice.ts'
import { sheetWord } from './sheet-words.ts'

/** Ruled places to write in: who, and when. */
export const SignLine = ({ words }: { readonly words: string }) => (
  <div class="sheet-signed">
    <p>{words}</p>
    <span>{sheetWord('name', say.value)}</span>
    <span>{sheetWord('date', say.value)}</span>
  </div>
)

type TableProps = {
  readonly caption: string
  readonly columns: readonly string[]
  readonly rows: readonly {
    readonly key: string
    readonly cells: readonly ComponentChildren[]
    readonly note?: ComponentChildren
  }[]
}

/** A table with rules round every cell, as it is written in. */
export const SheetTable = ({ caption, columns, rows }: TableProps) => (
  <table>
    <caption>{caption}</caption>
    <thead>
      <tr>
        {columns.map((column) => (
          <th key={column} scope="col">
            {column}
          </th>
        ))}
      </tr>
    </thead>
    {rows.map(({ key, cells, note }) => (
      <tbody key={key}>
        <tr>
          {cells.map((cell, at) => (
            <td key={columns[at] ?? at}>{cell}</td>
          ))}
        </tr>
        {note && (
          <tr>
            <td colSpan={columns.length}>{note}</td>
          </tr>
        )}
      </tbody>
    ))}
  </table>
)
