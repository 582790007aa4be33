import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { serverConfig } from '../../src/config.ts'
import { startSentence } from '../../src/server/serve.ts'
import { StoreError } from '../../src/store/store-error.ts'
import { workingFolder } from '../../src/working-folder.ts'

const FOLDERS = { root: '/program', working: '/home/ada' }
const configOf = (...given: Parameters<typeof serverConfig>) => {
  const found = serverConfig(...given)
  if (!found.ok) throw new Error(found.sentence)
  return found.config
}

describe('the configuration', () => {
  test('without anything: this machine only, the program’s own data folder, the demo', () => {
    expect(configOf({}, {}, FOLDERS)).toMatchObject({
      host: '127.0.0.1',
      dataFolder: join('/program', 'data'),
      demo: true,
    })
  })

  test('what is typed wins over the environment', () => {
    expect(configOf({ port: '5001' }, { PORT: '5000' }, FOLDERS).port).toBe(5001)
    expect(configOf({}, { PORT: '5000' }, FOLDERS).port).toBe(5000)
    expect(configOf({}, { PORT: '' }, FOLDERS).port).toBeGreaterThan(1023)
  })

  test('a folder is meant from where the person stands', () => {
    expect(configOf({ data: 'jobs' }, {}, FOLDERS).dataFolder).toBe(join('/home/ada', 'jobs'))
  })

  test.each(['x', '-1', '65536', '80.5', '1e3', ' 80'])('the port %s is refused in a sentence', (port) => {
    expect(serverConfig({ port }, {}, FOLDERS)).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('--port'),
    })
    expect(serverConfig({}, { PORT: port }, FOLDERS)).toMatchObject({
      sentence: expect.stringContaining('PORT'),
    })
  })
})

describe('where the person stands', () => {
  const throughNpm = { npm_lifecycle_event: 'underlane', INIT_CWD: '/home/ada' }

  test('is where npm was called from, when npm ran this very script in the root', () => {
    expect(workingFolder(throughNpm, '/program', '/program', 'underlane')).toBe('/home/ada')
  })

  test('is the current folder when another script only passed its environment on', () => {
    expect(
      workingFolder({ ...throughNpm, npm_lifecycle_event: 'test' }, '/program', '/program', 'underlane'),
    ).toBe('/program')
    expect(workingFolder(throughNpm, '/tmp/job', '/program', 'underlane')).toBe('/tmp/job')
  })
})

describe('what stops a start', () => {
  const config = configOf({ port: '80' }, {}, FOLDERS)
  const listenError = (code: string) => Object.assign(new Error(code), { code })

  test.each([
    ['EADDRINUSE', '--port'],
    ['EACCES', '--port'],
    ['EADDRNOTAVAIL', '--host'],
  ])('%s is said in one sentence with the way out', (code, wayOut) => {
    const sentence = startSentence(listenError(code), config)
    expect(sentence).toContain(wayOut)
    expect(sentence).not.toContain('\n')
  })

  test('a folder that cannot be written to is named', () => {
    expect(startSentence(new StoreError('cannot-write-folder', '/read/only', null), config)).toContain(
      '/read/only',
    )
  })

  test('a bug of ours is not dressed up', () => {
    expect(startSentence(new Error('bug'), config)).toBeNull()
  })
})
