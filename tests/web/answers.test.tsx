// @vitest-environment happy-dom
import { computed } from '@preact/signals'
import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import '../support/late-parts.ts'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { Answers } from '../../web/crossings/answers/answers.tsx'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import { type CrossingModel, createCrossingModel } from '../../web/state/crossing-model.ts'

afterEach(cleanup)
const model = () => createCrossingModel(FIRST_PRESET, { soon: (run) => run() })

describe('the answers', () => {
  test('without a plan name every missing thing and where it is', async () => {
    const empty = createCrossingModel({ name: 'Only a name' }, { soon: (run) => run() })
    render(<Answers model={empty} />)
    expect(await screen.findByText('Give the length to begin.')).toBeTruthy()
    expect(screen.getByRole('button', { name: 'Length, face to face' })).toBeTruthy()
    expect(screen.getByRole('button', { name: 'Tool' })).toBeTruthy()
    // Nobody has done anything wrong yet.
    expect(document.body.textContent).not.toContain('missing')
  })

  test('a figure behind which no relation was recorded is no button', async () => {
    render(<Answers model={model()} />)
    await screen.findByText('Bore diameter')
    expect(screen.queryByRole('button', { name: /^Bore diameter/ })).toBeNull()
    expect(screen.getByRole('button', { name: /^Bore over pipe/ })).toBeTruthy()
  })

  test('a working names what went in, beside the formula and its sources', async () => {
    render(<Answers model={model()} />)
    fireEvent.click(await screen.findByRole('button', { name: /^At the tool/ }))
    const dialog = await screen.findByRole('dialog')
    expect(dialog.textContent).toContain('185 cfm')
    expect(dialog.textContent).toContain('bore 3/4 in')
    expect(dialog.textContent).toContain('Sources')
  })

  test('a mistake of the engine is said to be ours, and the next change tries again', () => {
    const logged = vi.spyOn(console, 'error').mockImplementation(() => undefined)
    const good = model()
    const broken: CrossingModel = {
      ...good,
      answers: computed(() => {
        if (good.document.value.name === 'bad') throw new RangeError('ours')
        return good.answers.value
      }),
    }
    render(<Answers model={broken} />)
    act(() => good.set('name', 'bad'))
    expect(screen.getByText(/our mistake/)).toBeTruthy()
    act(() => good.set('name', 'mended'))
    expect(screen.queryByText(/our mistake/)).toBeNull()
    expect(screen.getByRole('heading', { name: 'Release' })).toBeTruthy()
    logged.mockRestore()
  })
})
