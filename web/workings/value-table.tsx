import type { NamedValue } from '../fields/relation-values.ts'

type Props = { readonly heading: string; readonly values: readonly NamedValue[] }

export function ValueTable({ heading, values }: Props) {
  return (
    <table class="values">
      <caption>{heading}</caption>
      <tbody>
        {values.map(({ name, words, value }) => (
          <tr key={name}>
            <th scope="row">
              {words === '' ? name : <code>{name}</code>} {words}
            </th>
            <td>{value}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
