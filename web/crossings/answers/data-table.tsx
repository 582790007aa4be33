import type { ComponentChildren } from 'preact'

type Props = {
  /** Few and short columns stay a table on the narrowest screen too. */
  readonly isShort?: boolean
  readonly caption: string
  readonly columns: readonly string[]
  readonly rows: readonly {
    readonly key: string
    readonly cells: readonly ComponentChildren[]
    /** What goes with the whole row, below it. */
    readonly note?: ComponentChildren
  }[]
}

/** One number with its unit: never parted at the end of a line. */
const ONE_QUANTITY = /^[−-]?[\d.,]+ \S{1,6}$/
const classOf = (cell: ComponentChildren): string | undefined =>
  typeof cell === 'string' && ONE_QUANTITY.test(cell) ? 'quantity' : undefined

/**
 * A table that stacks on a narrow screen, each cell under its column's name. Roles are given outright: browsers drop
 * those of a table that is laid out otherwise.
 */
export function DataTable({ caption, columns, rows, isShort = false }: Props) {
  return (
    <table class={isShort ? 'data' : 'data stacking'}>
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
              <td key={columns[at] ?? at} class={classOf(cell)} data-column={columns[at]}>
                {cell}
              </td>
            ))}
          </tr>
          {note && (
            <tr class="row-note">
              <td colSpan={columns.length}>{note}</td>
            </tr>
          )}
        </tbody>
      ))}
    </table>
  )
}
