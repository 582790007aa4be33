import { readdirSync, readFileSync } from 'node:fs'
import { join, posix } from 'node:path'
import { parseAst } from 'vite'

const ROOT = new URL('../../', import.meta.url).pathname
const ROOMS = ['shared', 'src', 'web', 'tests']

export type Node = { readonly type: string; readonly start: number; readonly end: number } & Readonly<
  Record<string, unknown>
>
export type SourceFile = {
  /** From the project's root, with forward slashes. */
  readonly path: string
  readonly text: string
  readonly lines: number
  readonly nodes: readonly Node[]
}
export type Import = { readonly from: string; readonly target: string; readonly typeOnly: boolean }

const isNode = (value: unknown): value is Node =>
  value !== null && typeof value === 'object' && 'type' in value && typeof value.type === 'string'

function collect(value: unknown, into: Node[]): void {
  if (Array.isArray(value)) for (const each of value) collect(each, into)
  else if (isNode(value)) {
    into.push(value)
    for (const inner of Object.values(value)) if (typeof inner === 'object') collect(inner, into)
  }
}

function languageOf(path: string): 'ts' | 'tsx' | 'js' {
  if (path.endsWith('.tsx')) return 'tsx'
  return path.endsWith('.ts') ? 'ts' : 'js'
}

function read(path: string): SourceFile {
  const text = readFileSync(join(ROOT, path), 'utf8')
  const nodes: Node[] = []
  collect(parseAst(text, { lang: languageOf(path) }), nodes)
  return { path, text, lines: text.split('\n').length - (text.endsWith('\n') ? 1 : 0), nodes }
}

function namesBelow(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = posix.join(folder, entry.name)
    return entry.isDirectory() ? namesBelow(path) : [path]
  })
}

/** Every file name of ours, program or not. */
export const FILE_NAMES: readonly string[] = ROOMS.flatMap(namesBelow)

/** Every program file of ours, parsed. */
export const SOURCE_FILES: readonly SourceFile[] = FILE_NAMES.filter((path) =>
  /\.(ts|tsx|mjs)$/.test(path),
).map(read)

const stringOf = (node: unknown): string | null =>
  isNode(node) && node.type === 'Literal' && typeof node.value === 'string' ? node.value : null

/** What a file imports: a path from the root for our own, the name as written for a package. */
export function importsOf(file: SourceFile): readonly Import[] {
  return file.nodes.flatMap((node): Import[] => {
    const named = ['ImportDeclaration', 'ExportNamedDeclaration', 'ExportAllDeclaration', 'ImportExpression']
    if (!named.includes(node.type)) return []
    const specifier = stringOf(node.source)
    if (specifier === null) return []
    const typeOnly = node.importKind === 'type' || node.exportKind === 'type'
    const target = specifier.startsWith('.') ? posix.join(posix.dirname(file.path), specifier) : specifier
    return [{ from: file.path, target, typeOnly }]
  })
}

/** The room a path lies in: 'shared/core', 'shared/sources', 'src', 'web', 'tests'; null for a package. */
export function roomOf(path: string): string | null {
  if (path === 'shared/sources.ts') return 'shared/sources'
  const [room, inner] = path.split('/')
  if (room === undefined || !ROOMS.includes(room)) return null
  return room === 'shared' ? `shared/${inner}` : room
}

export const lineOf = (file: SourceFile, node: Node): number =>
  file.text.slice(0, node.start).split('\n').length
