// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import '../support/late-parts.ts'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { EMPTY_CROSSING, FIRST_PRESET } from '../../web/crossings/presets.ts'
import { createCrossingModel } from '../../web/state/crossing-model.ts'

const MINE = { ...FIRST_PRESET, name: 'Mine', line: { length: '31 ft' }, note: 'typed by hand' }
const atOnce = { soon: (run: () => void) => run() }

/** As after a reload: the modules are new, what the browser remembers is not. */
const fresh = async () => {
  vi.resetModules()
  const { openInDraft, undoReplaced, beginEmpty } = await import('../../web/saved/draft-place.ts')
  const { ReplacedNote } = await import('../../web/saved/replaced-note.tsx')
  return { openInDraft, undoReplaced, beginEmpty, ReplacedNote }
}

beforeEach(() => {
  localStorage.clear()
  sessionStorage.clear()
})
afterEach(cleanup)

describe('a draft that gives way to another crossing', () => {
  test('is named and comes back whole, also after a reload and when the browser was closed', async () => {
    const before = await fresh()
    before.openInDraft(createCrossingModel(MINE, atOnce), EMPTY_CROSSING)
    sessionStorage.clear()
    const { ReplacedNote } = await fresh()
    const model = createCrossingModel(EMPTY_CROSSING, atOnce)
    render(<ReplacedNote draft={model} />)
    expect(screen.getByText('“Mine” was replaced by “an empty crossing”.')).toBeTruthy()
    fireEvent.click(screen.getByRole('button', { name: 'Undo' }))
    expect(model.document.value).toEqual(MINE)
    expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull()
  })

  test('is not forgotten when one example after another is looked at', async () => {
    const { openInDraft, undoReplaced } = await fresh()
    const model = createCrossingModel(MINE, atOnce)
    openInDraft(model, FIRST_PRESET)
    openInDraft(model, EMPTY_CROSSING)
    undoReplaced(model)
    expect(model.document.value).toEqual(MINE)
  })

  test('is not forgotten when what replaced it is saved', async () => {
    const { openInDraft, undoReplaced, beginEmpty } = await fresh()
    const model = createCrossingModel(MINE, atOnce)
    openInDraft(model, EMPTY_CROSSING)
    model.set('name', 'Another')
    beginEmpty(model)
    undoReplaced(model)
    expect(model.document.value).toEqual(MINE)
  })

  test('Undo itself loses nothing: what was typed meanwhile comes back next', async () => {
    const { openInDraft, undoReplaced } = await fresh()
    const model = createCrossingModel(MINE, atOnce)
    openInDraft(model, EMPTY_CROSSING)
    model.set('name', 'Typed meanwhile')
    undoReplaced(model)
    expect(model.document.value).toEqual(MINE)
    undoReplaced(model)
    expect(model.document.value).toEqual({ ...EMPTY_CROSSING, name: 'Typed meanwhile' })
  })

  test('an example that was only given a name is somebody’s work', async () => {
    const { openInDraft, undoReplaced } = await fresh()
    const model = createCrossingModel({ ...FIRST_PRESET, name: 'Elm Street 4' }, atOnce)
    openInDraft(model, EMPTY_CROSSING)
    undoReplaced(model)
    expect(model.document.value.name).toBe('Elm Street 4')
  })
})
