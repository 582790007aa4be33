import { OPENAPI_PATHS } from './openapi-paths.ts'

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

type Parameter = { readonly name: string; readonly in: string; readonly description: string }
type Operation = {
  readonly summary: string
  readonly description?: string
  readonly parameters?: readonly Parameter[]
  readonly responses: Readonly<Record<string, { readonly description: string }>>
}

const term = (name: string, description: string): string =>
  `<dt><code>${escaped(name)}</code></dt><dd>${escaped(description)}</dd>`

function operationHtml(method: string, path: string, operation: Operation): string {
  const { summary, description, parameters = [], responses } = operation
  const given = parameters.map((each) => term(`${each.name} (${each.in})`, each.description)).join('')
  const answers = Object.entries(responses).map(([status, each]) => term(status, each.description))
  return [
    `<section><h2><code>${method.toUpperCase()} ${escaped(path)}</code></h2><p>${escaped(summary)}.</p>`,
    description === undefined ? '' : `<p>${escaped(description)}</p>`,
    given === '' ? '' : `<h3>Takes</h3><dl>${given}</dl>`,
    `<h3>Answers</h3><dl>${answers.join('')}</dl></section>`,
  ].join('\n')
}

/** The API for people: made from the same document programs read, one plain page that needs nothing else. */
export function apiPage(): string {
  const operations = Object.entries(OPENAPI_PATHS).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => operationHtml(method, path, operation)),
  )
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Underlane: the API</title>
<link rel="stylesheet" href="/api/page.css">
</head>
<body>
<main>
<h1>The API</h1>
<p>JSON in, JSON out. For programs: <a href="/api/openapi.json">openapi.json</a>, and the
<a href="/api/schemas">JSON Schemas</a> of files and results. <a href="/">Back to Underlane</a>.</p>
<p>A quantity in a file is a string with a unit, such as <code>"46 ft 6 in"</code>. Results are in SI; each name ends in its
unit. An error is <code>{ code, requestId, issues }</code>, whatever went wrong. A change names the version it was made
from: <code>If-Match: "3"</code>.</p>
${operations.join('\n')}
</main>
</body>
</html>
`
}

/** The security policy allows no style inside a page, so it has a place of its own. */
export const API_PAGE_CSS = `:root { color-scheme: light dark }
body { font: 1rem/1.5 system-ui, sans-serif; margin: 0 }
main { max-width: 46rem; margin: 0 auto; padding: 1rem }
section { border-top: 1px solid; margin-top: 1.5rem }
h2 { font-size: 1.1rem; overflow-wrap: anywhere }
h3 { font-size: 0.9rem; margin: 0.75rem 0 0.25rem }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 0.25rem 1rem; margin: 0 }
dd { margin: 0 }
@media (max-width: 30rem) { dl { grid-template-columns: 1fr } dd { margin: 0 0 0.5rem 1rem } }
`
