import { basename } from 'node:path'
import { describe, expect, test } from 'vitest'
import {
  FILE_NAMES,
  importsOf,
  lineOf,
  type Node,
  roomOf,
  SOURCE_FILES,
  type SourceFile,
} from './source-tree.ts'

const MOST_LINES = 300
const MOST_LINES_OF_A_RELATION = 150
const MOST_LINES_OF_A_FUNCTION = 70

/** Data kept as printed may be as long as its source. */
const isTable = ({ path }: SourceFile): boolean =>
  ['shared/tables', 'shared/published'].includes(roomOf(path) ?? '') ||
  /^tests\/(fixtures|golden)\//.test(path)

const calls = (file: SourceFile, name: string): boolean =>
  file.nodes.some((node) => node.type === 'CallExpression' && nameOf(node.callee) === name)

function nameOf(node: unknown): string | null {
  if (node === null || typeof node !== 'object' || !('type' in node)) return null
  if (node.type === 'Identifier' && 'name' in node) return String(node.name)
  if (node.type === 'MemberExpression' && 'object' in node && 'property' in node) {
    return `${nameOf(node.object)}.${nameOf(node.property)}`
  }
  return null
}

const at = (file: SourceFile, node: Node): string => `${file.path}:${lineOf(file, node)}`
const among = (
  found: (file: SourceFile, node: Node) => boolean,
  files: readonly SourceFile[] = SOURCE_FILES,
) => files.flatMap((file) => file.nodes.filter((node) => found(file, node)).map((node) => at(file, node)))

describe('size', () => {
  test(`no file is longer than ${MOST_LINES} lines, tables apart: split it by question`, () => {
    const long = SOURCE_FILES.filter((file) => !isTable(file) && file.lines > MOST_LINES)
    expect(long.map((file) => `${file.path} ${file.lines}`)).toEqual([])
  })

  test(`a relation's file has at most ${MOST_LINES_OF_A_RELATION} lines`, () => {
    const relations = SOURCE_FILES.filter(
      (file) => roomOf(file.path) === 'shared/core' && calls(file, 'relation'),
    )
    const long = relations.filter((file) => file.lines > MOST_LINES_OF_A_RELATION)
    expect(long.map((file) => `${file.path} ${file.lines}`)).toEqual([])
  })

  test(`no function is longer than ${MOST_LINES_OF_A_FUNCTION} lines`, () => {
    const functions = ['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression']
    const long = among((file, node) => {
      if (!functions.includes(node.type) || roomOf(file.path) === 'tests') return false
      return file.text.slice(node.start, node.end).split('\n').length > MOST_LINES_OF_A_FUNCTION
    })
    expect(long).toEqual([])
  })
})

describe('names', () => {
  test('a file or folder is named for its one topic, never utils, helpers, common or misc', () => {
    const vague = FILE_NAMES.filter((path) => /(^|[/.-])(utils?|helpers?|common|misc)([/.-]|$)/i.test(path))
    expect(vague).toEqual([])
  })

  test('no index.ts that only passes on: import the file itself', () => {
    expect(FILE_NAMES.filter((path) => /^index\.(ts|tsx|mjs)$/.test(basename(path)))).toEqual([])
    expect(among((_file, node) => node.type === 'ExportAllDeclaration')).toEqual([])
  })

  test('file names are kebab-case', () => {
    const odd = SOURCE_FILES.filter(
      ({ path }) => !/^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+)+$/.test(basename(path)),
    )
    expect(odd.map((file) => file.path)).toEqual([])
  })
})

describe('the engine is pure', () => {
  const CORE = SOURCE_FILES.filter((file) => roomOf(file.path) === 'shared/core')
  const BANNED = [
    'Date',
    'Intl',
    'console',
    'process',
    'performance',
    'fetch',
    'globalThis',
    'setTimeout',
    'localStorage',
  ]

  test('no clock, locale, console or machine: hand what it needs in', () => {
    const declared = (node: Node) => node.type === 'Identifier' && BANNED.includes(String(node.name))
    const named = among((_file, node) => declared(node), CORE)
    const asPropertyOnly = among((file, node) => declared(node) && file.text[node.start - 1] === '.', CORE)
    expect(named.filter((place) => !asPropertyOnly.includes(place))).toEqual([])
  })

  test('no Math.random: draws are seeded', () => {
    const random = (_file: SourceFile, node: Node) =>
      node.type === 'MemberExpression' && nameOf(node) === 'Math.random'
    expect(
      among(
        random,
        SOURCE_FILES.filter((file) => file.path.startsWith('shared/')),
      ),
    ).toEqual([])
  })

  test('nothing async and nothing loaded late', () => {
    const late = (_file: SourceFile, node: Node) => node.type === 'ImportExpression' || node.async === true
    expect(among(late, CORE)).toEqual([])
  })
})

describe('types', () => {
  test('no any', () => {
    expect(among((_file, node) => node.type === 'TSAnyKeyword')).toEqual([])
  })

  test('no cast by way of unknown: parse, or prove it', () => {
    const twice = (_file: SourceFile, node: Node) => {
      const inner = node.expression
      return (
        node.type === 'TSAsExpression' &&
        inner !== null &&
        typeof inner === 'object' &&
        'type' in inner &&
        inner.type === 'TSAsExpression'
      )
    }
    expect(among(twice)).toEqual([])
  })

  test('no non-null assertion, no silenced compiler or linter', () => {
    expect(among((_file, node) => node.type === 'TSNonNullExpression')).toEqual([])
    const silenced = SOURCE_FILES.filter((file) =>
      /@ts-(ignore|nocheck)|biome-ignore(?!.*: \S)/.test(file.text),
    )
    expect(
      silenced.map((file) => file.path).filter((path) => path !== 'tests/architecture/tidy.test.ts'),
    ).toEqual([])
  })
})

describe('tests', () => {
  const TESTS = SOURCE_FILES.filter((file) => file.path.startsWith('tests/'))

  test('none is skipped, singled out or promised', () => {
    const names = ['it', 'test', 'describe', 'suite'].flatMap((word) =>
      ['skip', 'only', 'todo', 'fails', 'skipIf', 'runIf'].map((how) => `${word}.${how}`),
    )
    const guilty = among(
      (_file, node) => node.type === 'MemberExpression' && names.includes(nameOf(node) ?? ''),
      TESTS,
    )
    // A journey may need a browser that is not there; the runner counts that as a failure where it must.
    expect(guilty.filter((place) => !place.startsWith('tests/browser/'))).toEqual([])
  })

  test('every test file ends in .test.ts and holds a test', () => {
    const empty = TESTS.filter((file) => /\.test\.tsx?$/.test(file.path)).filter(
      (file) =>
        !['test', 'it'].some((name) => calls(file, name) || file.text.includes(`${name}.each`)) &&
        !/Suite\(/.test(file.text),
    )
    expect(empty.map((file) => file.path)).toEqual([])
  })
})

describe('promises', () => {
  test('no note of work left undone in program text', () => {
    const word = new RegExp(
      `\\b(${['TO', 'DO'].join('')}|${['FIX', 'ME'].join('')}|${['XX', 'X'].join('')})\\b`,
    )
    expect(SOURCE_FILES.filter((file) => word.test(file.text)).map((file) => file.path)).toEqual([])
  })

  test('everything imported from a file of ours exists', () => {
    const paths = new Set(FILE_NAMES)
    const lost = SOURCE_FILES.flatMap(importsOf).filter(
      (each) => roomOf(each.target) !== null && !paths.has(each.target.split('?')[0] ?? ''),
    )
    expect(lost.map((each) => `${each.from} → ${each.target}`)).toEqual([])
  })
})
