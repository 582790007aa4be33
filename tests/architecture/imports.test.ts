import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { type Import, importsOf, roomOf, SOURCE_FILES } from './source-tree.ts'

const IMPORTS = SOURCE_FILES.flatMap(importsOf)

/** Which rooms a room may look into; itself always. */
const MAY_ENTER: Readonly<Record<string, readonly string[]>> = {
  'shared/sources': [],
  'shared/core': ['shared/tables', 'shared/sources'],
  'shared/tables': ['shared/sources'],
  'shared/published': ['shared/sources'],
  'shared/quantities': [],
  'shared/contracts': ['shared/core', 'shared/quantities', 'shared/tables'],
  'shared/text': ['shared/contracts', 'shared/quantities'],
  'shared/drawing': ['shared/core', 'shared/text', 'shared/quantities'],
  src: [...SHARED_ROOMS()],
  web: [...SHARED_ROOMS()],
  tests: [...SHARED_ROOMS(), 'src', 'web'],
}

function SHARED_ROOMS(): readonly string[] {
  return ['core', 'tables', 'sources', 'published', 'quantities', 'contracts', 'text', 'drawing'].map(
    (room) => `shared/${room}`,
  )
}

/** Single doors: the shapes and codes one room needs of another, and no more of it. */
const DOORS: Readonly<Record<string, readonly RegExp[]>> = {
  // Kinds, and the shape of a refusal.
  'shared/quantities': [/^shared\/core\/(kinds|outcome)\.ts$/],
  // A check compares with what is printed; it needs the shape of a printed row, and names its sources.
  'shared/contracts': [/^shared\/published\/shape\.ts$/, /^shared\/sources/],
  // The engine's codes, and the citations a sentence may name.
  'shared/text': [
    /^shared\/core\/(kinds|outcome|trace|relation)\.ts$/,
    /^shared\/core\/plan\/(plan|crossing-input|ground-answers|learned-input)\.ts$/,
    /^shared\/sources/,
  ],
  // The shape of a table's rows, where the engine owns it.
  'shared/tables': [
    /^shared\/core\/plan\/crossing-input\.ts$/,
    /^shared\/core\/shop\/template\.ts$/,
    /^shared\/core\/kinds\.ts$/,
  ],
}

const GEODESIC = 'shared/core/line/geodesic.ts'

function mayEnter({ from, target }: Import): boolean {
  const here = roomOf(from)
  const there = roomOf(target)
  if (here === null || there === null) return false
  if (here === there || MAY_ENTER[here]?.includes(there)) return true
  return DOORS[here]?.some((door) => door.test(target)) ?? false
}

const packageName = (target: string): string =>
  target
    .split('/')
    .slice(0, target.startsWith('@') ? 2 : 1)
    .join('/')

const manifest: { dependencies: Record<string, string> } = JSON.parse(
  readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
)

function mayUsePackage({ from, target }: Import): boolean {
  const room = roomOf(from)
  if (room === 'tests') return true
  if (room === 'shared/contracts') return packageName(target) === 'zod'
  if (room === 'src' && target.startsWith('node:')) return true
  if (room === 'web' && from.endsWith('vite.config.ts') && target.startsWith('node:')) return true
  if (room === 'src' || room === 'web') return packageName(target) in manifest.dependencies
  return from === GEODESIC && packageName(target) === 'geographiclib-geodesic'
}

const spelled = (each: Import): string => `${each.from} → ${each.target}`

describe('the import rule', () => {
  test('there is something to look at', () => {
    expect(IMPORTS.length).toBeGreaterThan(50)
  })

  test('each room looks only into the rooms it may', () => {
    const own = IMPORTS.filter((each) => roomOf(each.target) !== null)
    expect(own.filter((each) => !mayEnter(each)).map(spelled)).toEqual([])
  })

  test('the shared rooms use no package but the two they may; the others only what is installed for use', () => {
    const packages = IMPORTS.filter((each) => roomOf(each.target) === null)
    expect(packages.filter((each) => !mayUsePackage(each)).map(spelled)).toEqual([])
  })

  test('nobody imports tests', () => {
    const guilty = IMPORTS.filter((each) => roomOf(each.target) === 'tests' && roomOf(each.from) !== 'tests')
    expect(guilty.map(spelled)).toEqual([])
  })

  test('only web/map touches Leaflet', () => {
    const guilty = IMPORTS.filter(
      (each) => packageName(each.target) === 'leaflet' && !each.from.startsWith('web/map/'),
    )
    expect(guilty.filter((each) => roomOf(each.from) !== 'tests').map(spelled)).toEqual([])
  })

  test('our own files are named in full, with their ending', () => {
    const guilty = IMPORTS.filter(
      (each) => roomOf(each.target) !== null && !/\.(ts|tsx|mjs|json|css|svg)$/.test(each.target),
    )
    expect(guilty.filter((each) => !each.target.includes('?')).map(spelled)).toEqual([])
  })
})

/** Fields of the engine, by folder; files straight under core/ belong to none. */
const fieldOf = (path: string): string | null => /^shared\/core\/([a-z]+)\//.exec(path)?.[1] ?? null
const FREE_FOR_ALL = ['numerics', 'statistics']

describe('inside the engine', () => {
  const inside = IMPORTS.filter(
    (each) => roomOf(each.from) === 'shared/core' && roomOf(each.target) === 'shared/core',
  )

  test('no field knows the plan or the catalogue', () => {
    const guilty = inside.filter((each) => {
      const here = fieldOf(each.from)
      if (here === null || here === 'plan') return false
      return fieldOf(each.target) === 'plan' || each.target === 'shared/core/catalogue.ts'
    })
    expect(guilty.map(spelled)).toEqual([])
  })

  test('fields look at each other one way only', () => {
    const pairs = new Set(
      inside
        .map((each) => [fieldOf(each.from), fieldOf(each.target)] as const)
        .filter(([here, there]) => here !== null && there !== null && here !== there)
        .map(([here, there]) => `${here}>${there}`),
    )
    const bothWays = [...pairs].filter((pair) => pairs.has(pair.split('>').reverse().join('>')))
    expect(bothWays).toEqual([])
  })

  test('numerics and statistics know no field', () => {
    const guilty = inside.filter((each) => {
      const here = fieldOf(each.from)
      const there = fieldOf(each.target)
      return here !== null && FREE_FOR_ALL.includes(here) && there !== null && !FREE_FOR_ALL.includes(there)
    })
    expect(guilty.map(spelled)).toEqual([])
  })
})

describe('cycles', () => {
  test('no file reaches itself through what it runs', () => {
    const next = new Map<string, string[]>()
    for (const { from, target, typeOnly } of IMPORTS) {
      if (!typeOnly && roomOf(target) !== null) next.set(from, [...(next.get(from) ?? []), target])
    }
    const done = new Set<string>()
    const cycles: string[] = []
    const visit = (path: string, trail: readonly string[]): void => {
      if (trail.includes(path)) cycles.push([...trail.slice(trail.indexOf(path)), path].join(' → '))
      else if (!done.has(path)) {
        for (const target of next.get(path) ?? []) visit(target, [...trail, path])
        done.add(path)
      }
    }
    for (const path of next.keys()) visit(path, [])
    expect(cycles).toEqual([])
  })
})
