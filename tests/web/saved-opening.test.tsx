// @vitest-environment happy-dom
import { signal } from '@preact/signals'
import { cleanup, render, screen } from '@testing-library/preact'
import '../support/late-parts.ts'
import { afterEach, describe, expect, test } from 'vitest'
import type { KeptCrossing } from '../../shared/contracts/kept-crossing.ts'
import { planDocument } from '../../src/plan-document.ts'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import { startFrom } from '../../web/saved/crossing-start.ts'
import type { Saver, SaveState } from '../../web/saved/saver.ts'
import { StoredResultNote } from '../../web/saved/stored-result-note.tsx'
import { ID, keptAs } from './saved-kept.ts'

afterEach(cleanup)

describe('which document a saved crossing opens with', () => {
  const none = { id: ID, kept: null, copy: null, own: null, queued: [] }
  const typed = { ...FIRST_PRESET, name: 'Typed' }
  const own = (version: number, document = typed) => ({
    id: ID,
    base: { version, document: FIRST_PRESET },
    document,
    at: '2026-11-25T08:00:00.000Z',
  })

  test('the server’s, when nothing else is known', () => {
    expect(startFrom({ ...none, kept: keptAs(2) })).toMatchObject({
      document: FIRST_PRESET,
      base: { version: 2 },
      waitingKey: null,
    })
  })

  test('what was typed here, from the version it was made from', () => {
    const start = startFrom({ ...none, kept: keptAs(3), own: own(2) })
    expect(start).toMatchObject({ document: typed, base: { version: 2 }, kept: { version: 3 } })
  })

  test('what was typed and has come through since is no second version', () => {
    expect(startFrom({ ...none, kept: keptAs(3, typed), own: own(2) })).toMatchObject({
      base: { version: 3 },
    })
  })

  test('this browser’s copy without a connection, and what waits to be sent', () => {
    const copy = { id: ID, version: 2, demo: false, document: FIRST_PRESET, keptAtMs: 0 }
    const queued = {
      id: ID,
      kind: 'put' as const,
      baseVersion: 2,
      document: typed,
      key: 'k',
      queuedAtMs: 0,
    }
    expect(startFrom({ ...none, copy })).toMatchObject({ document: FIRST_PRESET, base: { version: 2 } })
    expect(startFrom({ ...none, copy, queued: [{ ...queued, state: 'waiting' }] })).toMatchObject({
      document: typed,
      waitingKey: 'k',
    })
    // The server did not take it: both versions are shown.
    expect(startFrom({ ...none, kept: keptAs(3), queued: [{ ...queued, state: 'conflict' }] })).toMatchObject(
      {
        document: typed,
        base: { version: 2, document: null },
        waitingKey: null,
      },
    )
  })

  test('none, when nobody has it', () => {
    expect(startFrom(none)).toBeNull()
  })
})

describe('the stored result beside the live one', () => {
  const saverOf = (kept: KeptCrossing): Saver => ({
    id: ID,
    base: signal(null),
    kept: signal(kept),
    state: signal<SaveState>({ state: 'saved', version: 1 }),
    save: async () => {},
    saveOnTop: async () => {},
    takeKept: () => {},
    stop: () => {},
  })
  const plan = planDocument(FIRST_PRESET)
  const result = (): Record<string, never> => JSON.parse(JSON.stringify(plan.ok ? plan.value : null))

  test('says nothing when both say the same', () => {
    const { container } = render(
      <StoredResultNote saver={saverOf(keptAs(1, FIRST_PRESET, { result: result() }))} />,
    )
    expect(container.textContent).toBe('')
  })

  test('shows both, and by which engine, when a figure has moved', () => {
    const older = JSON.parse(JSON.stringify(result()))
    older.run.hammerTimeS.p50 = 35 * 60
    render(<StoredResultNote saver={saverOf(keptAs(1, FIRST_PRESET, { result: older, engine: '0.0.9' }))} />)
    expect(screen.getByText(/^Saved with engine 0\.0\.9: 35 min of hammering; now \d+ min\.$/)).toBeTruthy()
    expect(screen.getAllByText('35 min')).toHaveLength(1)
  })

  test('a result of an older engine with fewer parts still opens', () => {
    const older = { schema: 'underlane/plan@1', release: { status: 'check' } }
    render(<StoredResultNote saver={saverOf(keptAs(1, FIRST_PRESET, { result: older, engine: '0.0.1' }))} />)
    expect(screen.getByRole('heading', { name: /Saved figures/ })).toBeTruthy()
  })
})
