import { render } from 'preact'
import { canonicalJson } from '../../shared/contracts/canonical-json.ts'
import { adoptDrawingRules } from '../profile/drawing-rules.ts'
import { whenWords } from '../saved/when.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { textAt } from '../state/document-path.ts'
import { say } from '../state/unit-choice.ts'
import { JobSheet, type Sheeted, sheetIdentity } from './job-sheet.tsx'
import { sha256 } from './sha256.ts'
import { sheetWord } from './sheet-words.ts'

const SHORT_HASH = 8
const MOST_NAME = 60

const pageFoot = new CSSStyleSheet()

/** A text as CSS writes one. */
const quoted = (text: string): string =>
  `"${text.replace(/["\\\n\r]/g, (sign) => `\\${sign.charCodeAt(0).toString(16)} `)}"`

/** The foot of every page; a browser that has none on paper prints the same line once, at the end. */
function footRules(name: string, identity: string): string {
  const [before = '', between = '', after = ''] = sheetWord('sheetOf', say.value).split(/\{\w+\}/)
  const left = quoted(`${name.slice(0, MOST_NAME)} · ${identity}`)
  const right = `${quoted(before)} counter(page) ${quoted(between)} counter(pages) ${quoted(after)}`
  const type = 'font: 8pt sans-serif; color: #000'
  return `@page job-sheet { @bottom-left { content: ${left}; ${type}; white-space: nowrap } @bottom-right { content: ${right}; ${type} } }`
}

function sheeted(model: CrossingModel): Sheeted {
  const answers = model.answers.value
  return answers.state === 'current' ? { ...answers, issues: [] } : answers
}

/**
 * Whenever this page is printed, the job sheet is what comes out, made of the answers of that moment. It stays in the
 * page, unseen, until the next time: some browsers say that printing is over before it has begun.
 */
export function printsJobSheet(model: CrossingModel): () => void {
  adoptDrawingRules()
  const host = document.createElement('div')
  host.className = 'job-sheet-host'
  const leave = () => {
    render(null, host)
    host.remove()
  }
  const prepare = () => {
    leave()
    // The drawing on a sheet of its own is printed as it is.
    if (document.documentElement.dataset.view === 'sheet') return
    const answers = sheeted(model)
    const hash =
      answers.state === 'current' ? sha256(canonicalJson(model.document.value)).slice(0, SHORT_HASH) : null
    const name = textAt(model.document.value, 'name')
    pageFoot.replaceSync(footRules(name, sheetIdentity(answers, hash)))
    if (!document.adoptedStyleSheets.includes(pageFoot)) document.adoptedStyleSheets.push(pageFoot)
    document.body.append(host)
    render(
      <JobSheet name={name} answers={answers} shortHash={hash} when={whenWords(new Date().toISOString())} />,
      host,
    )
  }
  addEventListener('beforeprint', prepare)
  return () => {
    removeEventListener('beforeprint', prepare)
    leave()
  }
}
