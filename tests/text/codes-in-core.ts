import { readdirSync, readFileSync } from 'node:fs'

const ROOT = new URL('../../', import.meta.url)

export const sourceOf = (path: string): string => readFileSync(new URL(path, ROOT), 'utf8')

/** Everything a pattern finds in a source, each once; its first filled group is the code. */
export function codesIn(text: string, pattern: RegExp): readonly string[] {
  return [...new Set([...text.matchAll(pattern)].map((found) => found[1] ?? found[2] ?? ''))].filter(
    (code) => code !== '',
  )
}

export const sourcesUnder = (folder: string): readonly { readonly path: string; readonly text: string }[] =>
  readdirSync(new URL(folder, ROOT), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => ({ path: `${folder}/${name}`, text: sourceOf(`${folder}/${name}`) }))

const release = ['release', 'asked-reasons'].map((name) => sourceOf(`shared/core/plan/${name}.ts`)).join('\n')
const cautions = sourceOf('shared/core/plan/cautions.ts')
const checklist = sourceOf('shared/core/plan/checklist.ts')
const price = sourceOf('shared/core/plan/price.ts')
const wear = sourceOf('shared/core/plan/wear.ts')
const shapes = sourceOf('shared/core/plan/plan.ts')
const airPart = sourceOf('shared/core/plan/air-part.ts')
const item = /\[\s*'([a-z0-9-]+)',\s*'[a-z0-9-]+',\s*'[A-Z]\w+',/g

/** Members of a union of words in the plan's shape: `readonly fit: 'tight' | …`. */
function union(name: string): readonly string[] {
  const written = [...shapes.matchAll(new RegExp(`readonly ${name}:([^\\n]*(?:\\n\\s*\\|[^\\n]*)*)`, 'g'))]
  return written.flatMap((found) => codesIn(found[1] ?? '', /'([^']+)'/g))
}

/** Every code the engine can give, read off its sources. */
export const CODES = {
  issue: codesIn(
    /export type IssueCode =([\s\S]*?)\n\n/.exec(sourceOf('shared/core/outcome.ts'))?.[1] ?? '',
    /'([^']+)'/g,
  ),
  release: codesIn(release, /reason\(\s*'\w+',\s*'([a-z-]+)'/g).concat(
    codesIn(release, /\?\s*'([a-z]+(?:-[a-z]+)+)'/g),
    codesIn(release, /\?[^\n]*:\s*'([a-z]+(?:-[a-z]+)+)'/g),
  ),
  caution: codesIn(cautions, /caution\(\s*'\w+',\s*'([a-z-]+)'/g),
  checklist: codesIn(checklist, item),
  when: codesIn(checklist, /\[\s*'[a-z0-9-]+',\s*'([a-z0-9-]+)',\s*'[A-Z]\w+',/g),
  pullWhy: codesIn(sourceOf('shared/core/plan/pull.ts'), /[?:] '([a-z-]+)'|return '([a-z-]+)'/g).concat(
    codesIn(sourceOf('shared/core/plan/pull.ts'), /return '([a-z-]+)'|\?\? '([a-z-]+)'/g),
    ['sane-too', 'no-sane-method'],
  ),
  priceLine: codesIn(price, /money\(\s*'([a-z-]+)'/g).concat(codesIn(price, /code: '([a-z-]+)'/g)),
  wearPart: codesIn(wear, /^\s*\['([a-z-]+)',/gm).concat(codesIn(wear, /part: '([a-z-]+)'/g)),
  serviceTask: codesIn(wear, /'([a-z]+(?:-[a-z0-9]+)+)'(?=[,\]])/g),
  fit: union('fit'),
  airFlag: codesIn(/AirFlag =([^\n]*)/.exec(airPart)?.[1] ?? '', /'([^']+)'/g),
  toolState: codesIn(/ToolState =([^\n]*)/.exec(airPart)?.[1] ?? '', /'([^']+)'/g),
  limitedBy: codesIn(
    /LimitedBy =([^\n]*)/.exec(sourceOf('shared/core/air/air-system.ts'))?.[1] ?? '',
    /'([^']+)'/g,
  ),
  airElement: codesIn(sourceOf('shared/core/air/air-element.ts'), /readonly kind: '([^']+)'/g).concat(
    codesIn(sourceOf('shared/core/air/air-element.ts'), /readonly kind: '[^']+' \| '([^']+)'/g),
  ),
  severity: union('severity'),
  pitServes: union('serves'),
  limitWhy: union('pullLimitReason'),
  clearanceWhy: union('reason'),
  proposal: ['other-end', 'deeper', 'shallower', 'extra-pit'].filter((code) =>
    sourceOf('shared/core/plan/path-parts.ts').includes(`'${code}'`),
  ),
  reasonKind: codesIn(/ReasonKind =([^\n]*)/.exec(shapes)?.[1] ?? '', /'([^']+)'/g),
  standing: codesIn(/Standing =([^\n]*)/.exec(sourceOf('shared/sources/shape.ts'))?.[1] ?? '', /'([^']+)'/g),
} as const

/** Names of assumptions noted on the spot; `${index}` stands as a star. */
export function notedAssumptions(): readonly string[] {
  const plan = sourcesUnder('shared/core/plan').map((file) => file.text)
  const plain = plan.flatMap((text) => codesIn(text, /note\(\{\s*name: (?:'([^']+)'|`([^`]+)`)/g))
  const ground = codesIn(sourceOf('shared/core/ground/ground-state.ts'), /assume\('(\w+)'/g)
  const tool = codesIn(sourceOf('shared/core/plan/tool-facts.ts'), /or\(tool\.\w+, '(\w+)'/g)
  return [
    ...plain.filter((name) => !name.startsWith('tool.$')).map((name) => name.replace(/\$\{[^}]+\}/g, '*')),
    ...ground.map((name) => `ground.*.${name}`),
    ...tool.map((name) => `tool.${name}`),
  ]
}
