import { describe, expect, test } from 'vitest'
import { drawingStyle } from '../../shared/drawing/drawing-style.ts'
import { standaloneSvg, svgText } from '../../shared/drawing/svg-text.ts'
import { node, textNode } from '../../shared/drawing/svg-tree.ts'
import { DEMO_NAMES, demoDocument } from '../support/crossings.ts'
import { BUSY, drawn } from './drawn.ts'

/** Well-formed as XML asks: every tag closed in its order, attributes quoted, no bare sign between them. */
function faultOf(xml: string): string | null {
  const body = xml.replace(/^<\?xml[^?]*\?>\s*/, '').trimEnd()
  const open: string[] = []
  const token = /<(\/?)([A-Za-z][\w-]*)((?:\s+[A-Za-z_:][\w:-]*="[^"<]*")*)(\/?)>|([^<]+)/gy
  let at = 0
  while (at < body.length) {
    token.lastIndex = at
    const found = token.exec(body)
    if (!found) return `at ${at}: ${body.slice(at, at + 40)}`
    at = token.lastIndex
    const [, closing, name = '', attributes = '', single, text] = found
    if (/&(?!(amp|lt|gt|quot|#39);)/.test(text ?? attributes)) return `bare & near ${at}`
    if (text !== undefined) continue
    if (closing && open.pop() !== name) return `</${name}> at ${at}`
    if (!closing && !single) open.push(name)
    if (open.length === 0 && at < body.length) return `more than one root at ${at}`
  }
  return open.length === 0 ? null : `open: ${open.join(' ')}`
}

describe('a tree as text', () => {
  test('everything of the user is escaped', () => {
    const tree = node('svg', { class: 'a"b<c' }, [textNode('text', {}, `<script>&"'</script>`)])
    expect(svgText(tree)).toBe(
      '<svg class="a&quot;b&lt;c"><text>&lt;script&gt;&amp;&quot;&#39;&lt;/script&gt;</text></svg>',
    )
  })

  test('what XML has no place for is left out', () => {
    expect(svgText(textNode('text', {}, 'a\u0000b\u000bc\ud800d\ufffee'))).toBe('<text>abcde</text>')
  })

  test('a place that is no number is our mistake, and thrown', () => {
    expect(() => node('rect', { x: Number.NaN })).toThrow('no place')
    expect(() => node('rect', { x: 1 / 0 })).toThrow('no place')
  })

  test.each([...DEMO_NAMES, 'busy'])('%s by itself is well-formed, titled, and fetches nothing', (name) => {
    const { tree } = drawn(name === 'busy' ? BUSY : demoDocument(name), { heading: true })
    const xml = standaloneSvg(tree, drawingStyle('file'))
    expect(faultOf(xml)).toBeNull()
    expect(xml).toContain('<title id=')
    expect(xml).toContain('<desc id=')
    expect(xml).toContain('<style>')
    expect(xml.replace('http://www.w3.org/2000/svg', '')).not.toMatch(
      /https?:|href|@import|url\((?!#)|<script|var\(/,
    )
  })

  test('every gradient and clip it points to is there', () => {
    const xml = standaloneSvg(drawn(BUSY).tree, drawingStyle('file'))
    for (const [, id] of xml.matchAll(/url\(#([^)]+)\)/g)) expect(xml).toContain(`id="${id}"`)
  })

  test('the checker sees what is broken', () => {
    for (const broken of ['<a><b></a></b>', '<a>', '<a/><b/>', '<a>&</a>', '<a x=1/>', '<a>x < y</a>'])
      expect(faultOf(broken)).not.toBeNull()
  })
})

describe('the style', () => {
  test('on the page every colour can be set by the page', () => {
    const style = drawingStyle('page')
    expect(style).toContain('var(--ink, #1b2831)')
    expect(drawingStyle('file')).not.toContain('var(')
  })
})
