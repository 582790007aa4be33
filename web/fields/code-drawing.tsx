import './code-drawing.css'
import qrcode from 'qrcode-generator'

/** A square code to be scanned. Its modules are one path: no data address, which the page's own rules would refuse. */
export function CodeDrawing({ text, label }: { readonly text: string; readonly label: string }) {
  const code = qrcode(0, 'M')
  code.addData(text)
  code.make()
  const count = code.getModuleCount()
  const dark = Array.from({ length: count * count }, (_, place) => [Math.floor(place / count), place % count])
    .filter(([row = 0, column = 0]) => code.isDark(row, column))
    .map(([row = 0, column = 0]) => `M${column} ${row}h1v1h-1z`)
  return (
    <svg class="tag-code" viewBox={`-4 -4 ${count + 8} ${count + 8}`} role="img" aria-label={label}>
      <path class="tag-paper" d={`M-4-4h${count + 8}v${count + 8}h-${count + 8}z`} />
      <path class="tag-ink" d={dark.join('')} />
    </svg>
  )
}
