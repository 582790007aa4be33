// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact'
import '../support/late-parts.ts'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { PRESETS } from '../../web/crossings/presets.ts'
import { Profile } from '../../web/profile/profile.tsx'
import { type CrossingModel, createCrossingModel } from '../../web/state/crossing-model.ts'
import { textAt } from '../../web/state/document-path.ts'
import type { JsonObject } from '../../web/state/json.ts'
import { chooseUnits } from '../../web/state/unit-choice.ts'

// A page without layout has no widths: this one is a desk.
beforeEach(() => {
  vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockReturnValue(1000)
})
afterEach(() => {
  cleanup()
  vi.restoreAllMocks()
  chooseUnits('us')
})

const preset = (id: string): JsonObject => PRESETS.find((each) => each.id === id)?.document ?? {}

async function shown(document: JsonObject): Promise<CrossingModel> {
  const model = createCrossingModel(document, { soon: (run) => run() })
  render(<Profile model={model} />)
  await screen.findByRole('slider', { name: 'Launch' })
  return model
}
const slider = (name: string) => screen.getByRole('slider', { name })
const press = (name: string, ...keys: readonly string[]) => {
  for (const key of keys) fireEvent.keyDown(slider(name), { key })
}

describe('the profile', () => {
  test('says a depth with its datum, and writes the next one the tape shows, datum kept', async () => {
    const model = await shown(preset('short-side-water'))
    expect(slider('Launch').getAttribute('aria-valuetext')).toBe('Launch: top 3 ft 6 in')
    press('Launch', 'ArrowDown')
    expect(model.document.value.depth).toEqual({ launch: '3 ft 6-1/2 in', reception: '42 in', to: 'top' })
    expect(slider('Launch').getAttribute('aria-valuetext')).toBe('Launch: top 3 ft 6-1/2 in')
    press('Receiving', 'PageDown')
    expect(textAt(model.document.value, 'depth.reception')).toBe('4 ft')
  })

  test('writes metres for a reader of metres', async () => {
    chooseUnits('si')
    const model = await shown(preset('short-side-water'))
    press('Launch', 'ArrowDown', 'PageDown')
    expect(textAt(model.document.value, 'depth.launch')).toBe('1.17 m')
    expect(slider('Reception').getAttribute('aria-valuetext')).toBe('Reception: top 1.07 m')
  })

  test('Escape takes back what the keys did; undo does after it, until something else is typed there', async () => {
    const model = await shown(preset('short-side-water'))
    press('Launch', 'ArrowDown', 'ArrowDown', 'Escape')
    expect(textAt(model.document.value, 'depth.launch')).toBe('42 in')
    press('Launch', 'ArrowDown', 'ArrowDown')
    fireEvent.blur(slider('Launch'))
    fireEvent.click(screen.getByRole('button', { name: 'Undo: Launch back to 42 in' }))
    expect(textAt(model.document.value, 'depth.launch')).toBe('42 in')
    press('Launch', 'ArrowDown')
    act(() => model.set('depth.launch', '5 ft'))
    expect(screen.getByRole('button', { name: 'Undo the last drag' }).hasAttribute('disabled')).toBe(true)
  })

  test('a middle pit that had no depth gets one, and undo leaves it without again', async () => {
    const model = await shown(preset('duct-run'))
    expect(screen.getAllByRole('slider')).toHaveLength(6)
    press('Pit 2', 'ArrowDown')
    expect(textAt(model.document.value, 'shots.1.depth')).toBe('2 ft 6-1/2 in')
    fireEvent.click(screen.getByRole('button', { name: 'Undo: Pit 2 back to the straight line' }))
    expect(model.document.value.shots).toEqual(preset('duct-run').shots)
  })

  test('dragged, a depth follows the hand from where it was taken', async () => {
    const model = await shown(preset('short-side-water'))
    const handle = slider('Launch')
    handle.setPointerCapture = () => {}
    const point = (clientY: number) => ({ clientY, button: 0, isPrimary: true, pointerId: 1 })
    fireEvent.pointerDown(handle, point(300))
    fireEvent.pointerMove(handle, point(300))
    expect(textAt(model.document.value, 'depth.launch')).toBe('42 in')
    fireEvent.pointerMove(handle, point(330))
    const deeper = textAt(model.document.value, 'depth.launch')
    fireEvent.pointerMove(handle, point(-5000))
    const shallowest = textAt(model.document.value, 'depth.launch')
    expect(model.answers.value.state).toBe('current')
    fireEvent.pointerMove(handle, point(330))
    expect(textAt(model.document.value, 'depth.launch')).toBe(deeper)
    expect([deeper, shallowest]).toEqual([expect.stringMatching(/^[34] ft/), '2 in'])
    fireEvent.lostPointerCapture(handle)
    fireEvent.pointerMove(handle, point(400))
    expect(textAt(model.document.value, 'depth.launch')).toBe(deeper)
  })

  test('while the form cannot be planned, the last good drawing stays, says so, and rests', async () => {
    const model = await shown(preset('short-side-water'))
    act(() => model.set('line.length', '28 bananas'))
    expect(screen.getByText(/this is the last complete one/)).toBeTruthy()
    press('Launch', 'ArrowDown')
    expect(textAt(model.document.value, 'depth.launch')).toBe('42 in')
    expect(slider('Launch').getAttribute('aria-disabled')).toBe('true')
  })

  test('the depth scale is chosen and said in the drawing’s own words', async () => {
    await shown(preset('short-side-water'))
    fireEvent.change(screen.getByLabelText('Depth scale'), { target: { value: '10' } })
    expect(screen.getByRole('status').textContent).toBe('Vertical scale 10 times the horizontal.')
    fireEvent.change(screen.getByLabelText('Depth scale'), { target: { value: '1' } })
    expect(screen.getByRole('status').textContent).toBe('Depth and length drawn to the same scale.')
  })

  test('the sheet stands alone in millimetres, and closing gives the page and the focus back', async () => {
    const print = vi.fn()
    vi.stubGlobal('print', print)
    await shown(preset('short-side-water'))
    const button = screen.getByRole('button', { name: 'Print to scale' })
    fireEvent.change(screen.getByLabelText('Paper'), { target: { value: 'a4' } })
    act(() => button.click())
    const sheet = document.querySelector('.sheet-paper svg')
    expect([sheet?.getAttribute('width'), sheet?.getAttribute('height')]).toEqual(['297mm', '210mm'])
    expect(document.documentElement.dataset.view).toBe('sheet')
    fireEvent.click(screen.getByRole('button', { name: 'Back' }))
    expect(document.querySelector('.sheet-view')).toBeNull()
    expect(document.documentElement.dataset.view).toBeUndefined()
    expect(document.activeElement).toBe(button)
    vi.unstubAllGlobals()
  })
})
