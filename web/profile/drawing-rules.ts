import { drawingStyle } from '../../shared/drawing/drawing-style.ts'

let isAdopted = false

/** The rules all drawings share, once a page: as a sheet made by script, for the page's policy refuses inline styles. */
export function adoptDrawingRules(): void {
  if (isAdopted) return
  isAdopted = true
  const rules = new CSSStyleSheet()
  rules.replaceSync(drawingStyle('page'))
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules]
}
