import type { SvgNode } from './svg-tree.ts'

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** XML 1.0 has no place for most control characters, for half a surrogate pair, or for U+FFFE and U+FFFF. */
const isAllowed = (codePoint: number): boolean =>
  codePoint >= 0x20
    ? !(codePoint >= 0xd800 && codePoint <= 0xdfff) && codePoint !== 0xfffe && codePoint !== 0xffff
    : codePoint === 0x09 || codePoint === 0x0a || codePoint === 0x0d

function escaped(text: string): string {
  const allowed = [...text].filter((character) => isAllowed(character.codePointAt(0) ?? 0)).join('')
  return allowed.replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign)
}

/** A tree as text. Nothing is fetched from elsewhere: what a drawing needs stands in it. */
export function svgText(tree: SvgNode): string {
  const attributes = Object.entries(tree.attributes)
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join('')
  const inner = `${escaped(tree.text ?? '')}${tree.children.map(svgText).join('')}`
  return inner === '' ? `<${tree.tag}${attributes}/>` : `<${tree.tag}${attributes}>${inner}</${tree.tag}>`
}

/** A file by itself: the same tree with its colours inside. */
export function standaloneSvg(tree: SvgNode, style: string): string {
  const styleNode: SvgNode = { tag: 'style', attributes: {}, children: [], text: style }
  const whole = { ...tree, children: [...tree.children.slice(0, 2), styleNode, ...tree.children.slice(2)] }
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svgText(whole)}\n`
}
