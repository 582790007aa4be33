import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

const ROOT = new URL('../../', import.meta.url)
const read = (path: string): string => readFileSync(new URL(path, ROOT), 'utf8')

type Package = {
  readonly version: string
  readonly license?: unknown
  readonly scripts?: Readonly<Record<string, string>>
}
type Project = Readonly<Record<'dependencies' | 'devDependencies', Readonly<Record<string, string>>>>
type Lock = { readonly packages: Readonly<Record<string, { readonly hasInstallScript?: boolean }>> }

const project: Project = JSON.parse(read('package.json'))
const wanted: Readonly<Record<string, string>> = { ...project.dependencies, ...project.devDependencies }

/** The rows of the table in DEVELOPERS.md, by the package's name. */
function listed(): ReadonlyMap<string, readonly string[]> {
  const lines = read('DEVELOPERS.md').split('\n')
  const start = lines.findIndex((line) => /^\| package +\| version/.test(line))
  const length = lines.slice(start).findIndex((line) => !line.startsWith('|'))
  const rows = lines.slice(start + 2, start + length).map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  )
  return new Map(rows.map(([name = '', ...cells]) => [name, cells]))
}

/** What npm runs when it puts a package in. */
const INSTALL_SCRIPTS = ['preinstall', 'install', 'postinstall']

const LISTED = listed()

describe('the packages in DEVELOPERS.md', () => {
  test('are those of package.json, each of them and no other', () => {
    expect([...LISTED.keys()].sort()).toEqual(Object.keys(wanted).sort())
  })

  test.each(Object.entries(wanted))('%s is as it is installed', (name, version) => {
    const installed: Package = JSON.parse(read(`node_modules/${name}/package.json`))
    const runs = INSTALL_SCRIPTS.some((script) => installed.scripts?.[script] !== undefined)
    const [saidVersion, licence, released = '', script, reason = ''] = LISTED.get(name) ?? []
    expect({ saidVersion, licence, script }).toEqual({
      saidVersion: version,
      licence: installed.license,
      script: runs ? 'yes' : 'no',
    })
    expect(installed.version).toBe(version)
    expect(released).toMatch(/^20\d\d-\d\d-\d\d$/)
    expect(reason).not.toBe('')
  })

  test('name every one that brings a script, also among what they bring along', () => {
    const lock: Lock = JSON.parse(read('package-lock.json'))
    const withScript = Object.entries(lock.packages)
      .filter(([, each]) => each.hasInstallScript === true)
      .map(([path]) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length))
    const said = [...LISTED].filter(([, cells]) => cells[3] === 'yes').map(([name]) => name)
    expect([...new Set(withScript)].sort()).toEqual(said.sort())
    expect(read('.npmrc')).toMatch(/^ignore-scripts=true$/m)
  })
})

test('each promise in DEVELOPERS.md names tests that are there', () => {
  const table = read('DEVELOPERS.md').split('## Promises of the server')[1] ?? ''
  const rows = table
    .split('\n')
    .filter((line) => /^\| [^-]/.test(line))
    .slice(1)
  expect(rows.length).toBeGreaterThan(30)
  for (const row of rows) {
    const named = [...row.matchAll(/`(tests\/[^`]+)`/g)].map((found) => found[1] ?? '')
    expect(named.length, row).toBeGreaterThan(0)
    expect(named.filter((path) => !existsSync(new URL(path, ROOT)))).toEqual([])
  }
})
