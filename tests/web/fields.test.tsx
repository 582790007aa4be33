// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact'
import '../support/late-parts.ts'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { LinesPanel } from '../../web/crossings/form/lines-panel.tsx'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import { PipeNoteField } from '../../web/fields/pipe-note-field.tsx'
import { QuantityField } from '../../web/fields/quantity-field.tsx'
import { type CrossingModel, createCrossingModel } from '../../web/state/crossing-model.ts'
import { textAt, valueAt } from '../../web/state/document-path.ts'
import { chooseUnits } from '../../web/state/unit-choice.ts'

let model: CrossingModel
beforeEach(() => {
  chooseUnits('us')
  sessionStorage.clear()
  model = createCrossingModel(FIRST_PRESET, { soon: (run) => run() })
})
afterEach(cleanup)

const at = (path: string) => textAt(model.document.value, path)
const lengthField = () => {
  render(<QuantityField model={model} path="line.length" label="Length" kind="length" isRequired />)
  return screen.getByLabelText<HTMLInputElement>('Length')
}

describe('a quantity', () => {
  test('a pressure without a unit is asked for its unit, once, with a button for each', () => {
    render(
      <QuantityField model={model} path="air.compressor.pressure" label="Pressure" kind="gaugePressure" />,
    )
    const field = screen.getByLabelText<HTMLInputElement>('Pressure')
    fireEvent.input(field, { target: { value: '100' } })
    fireEvent.blur(field)
    const said = screen.getByText(/“100” has no unit/).textContent ?? ''
    expect(said).not.toMatch(/runs on so little|Did you mean|Answer with/)
    fireEvent.click(screen.getByRole('button', { name: '100 psi' }))
    expect(at('air.compressor.pressure')).toBe('100 psi')
  })

  test('complete text reaches the crossing at once', () => {
    fireEvent.input(lengthField(), { target: { value: '36 ft' } })
    expect(at('line.length')).toBe('36 ft')
  })

  test('half-typed text stays in the field until it is left, then is refused in a sentence and kept', () => {
    const field = lengthField()
    fireEvent.input(field, { target: { value: '36 f' } })
    expect(at('line.length')).toBe('28 ft')
    expect(field.getAttribute('aria-invalid')).toBe('false')
    fireEvent.blur(field)
    expect(at('line.length')).toBe('36 f')
    expect(field.value).toBe('36 f')
    expect(field.getAttribute('aria-invalid')).toBe('true')
    const described = field.getAttribute('aria-describedby') ?? ''
    const sentence = described.split(' ').map((id) => document.getElementById(id)?.textContent ?? '')
    expect(sentence.join('')).toContain('36 f')
  })

  test('a bare number is a question with its readings as buttons', () => {
    const field = lengthField()
    fireEvent.input(field, { target: { value: '42' } })
    fireEvent.blur(field)
    fireEvent.click(screen.getByRole('button', { name: /42 ft/ }))
    expect(at('line.length')).toBe('42 ft')
    expect(field.value).toBe('42 ft')
  })

  test('says back what was understood when it is not what stands there', () => {
    fireEvent.input(lengthField(), { target: { value: '8.5 m' } })
    expect(screen.getByText(/^= 27 ft/)).toBeTruthy()
  })

  test('a decimal foot is echoed in feet and inches', () => {
    fireEvent.input(lengthField(), { target: { value: '4.6 ft' } })
    expect(screen.getByText(/4 ft 7-1\/4 in, not 4.*6/)).toBeTruthy()
  })

  test('the unit a label implies is written into the file', () => {
    render(
      <QuantityField
        model={model}
        path="air.compressor.freeAirDelivery"
        label="Compressor"
        kind="volumeFlow"
        impliedUnit="cfm"
      />,
    )
    fireEvent.input(screen.getByLabelText('Compressor'), { target: { value: '375' } })
    fireEvent.blur(screen.getByLabelText('Compressor'))
    expect(at('air.compressor.freeAirDelivery')).toBe('375 cfm')
  })
})

test('what is no wall of the pipe is said at the wall, and a ratio that is none at the ratio, each with what would do', () => {
  const said = () => model.issues.value.map(({ path, candidates }) => [path, candidates?.[0]?.value])
  model.set('pipes.0.wall', '12 parsecs')
  expect(said()).toEqual([['pipes.0.wall', 'K']])
  model.setAll([
    ['pipes.0.wall', undefined],
    ['pipes.0.system', 'pe-cts'],
    ['pipes.0.sdr', 50],
  ])
  expect(said()).toEqual([['pipes.0.sdr', '7.3']])
})

test('a day that is none is told what a day looks like', () => {
  model.set('air.hoses.0.measuredOn', 'last Tuesday')
  expect(model.issues.value).toMatchObject([
    { path: 'air.hoses.0.measuredOn', accepted: 'a day such as 2026-03-02' },
  ])
})

describe('a pipe note', () => {
  const noteField = () => {
    render(<PipeNoteField model={model} path="pipes.0" label="Pipe" />)
    return screen.getByLabelText<HTMLInputElement>('Pipe')
  }

  test('is understood into system, size and wall', () => {
    fireEvent.input(noteField(), { target: { value: '1" CTS SDR 9' } })
    expect(valueAt(model.document.value, 'pipes.0')).toMatchObject({ system: 'pe-cts', size: '1', sdr: 9 })
    expect(at('pipes.0.wall')).toBe('')
    expect(model.answers.value.state).toBe('current')
  })

  test('an outside diameter alone keeps every digit', () => {
    fireEvent.input(noteField(), { target: { value: '1.315 in OD' } })
    expect(at('pipes.0.outsideDiameter')).toBe('1.315 in')
    expect(at('pipes.0.system')).toBe('')
    expect(model.answers.value.state).toBe('current')
  })

  test('one that is not known makes the answers those of before, until it is mended or gone', () => {
    const model = createCrossingModel(FIRST_PRESET, { soon: (run) => run() })
    const { unmount } = render(<PipeNoteField model={model} path="pipes.0" label="Pipe" />)
    const field = screen.getByLabelText('Pipe')
    const type = (value: string) => {
      fireEvent.input(field, { target: { value } })
      fireEvent.blur(field)
    }
    type('purple pipe')
    expect(model.answers.value).toMatchObject({ state: 'former', issues: [{ path: 'pipes.0.note' }] })
    type('1 CTS')
    expect(model.answers.value.state).toBe('current')
    type('purple pipe')
    expect(model.answers.value.state).toBe('former')
    unmount()
    expect(model.answers.value.state).toBe('current')
  })

  test('one that is not known is still there after a reload, beside its own pipe only', () => {
    const typed = noteField()
    fireEvent.input(typed, { target: { value: 'purple pipe' } })
    cleanup()
    expect(noteField().value).toBe('purple pipe')
    expect(screen.getByText(/“purple pipe” is not a pipe known here/)).toBeDefined()
    cleanup()
    model.set('pipes.0.size', '2')
    expect(noteField().value).toBe('')
  })

  test('one that is not known says so with examples, and shows the former pipe as the former', () => {
    const field = noteField()
    fireEvent.input(field, { target: { value: 'purple pipe' } })
    expect(document.body.textContent).not.toContain('3/4 in copper')
    fireEvent.blur(field)
    expect(
      screen.getByText(/“purple pipe” is not a pipe known here\. Accepted: 3\/4 K, 1 in CTS/),
    ).toBeTruthy()
    expect(
      screen.getByText(/^The plan still has the pipe from before: 3\/4 in copper water tube, type K/),
    ).toBeTruthy()
  })

  test('one that may be two pipes is asked about, and the pipe in hand stays', () => {
    const field = noteField()
    fireEvent.input(field, { target: { value: '1 in PE' } })
    fireEvent.blur(field)
    expect(at('pipes.0.system')).toBe('copper-b88')
    expect(field.value).toBe('1 in PE')
    expect(screen.getAllByRole('button').length).toBeGreaterThan(1)
  })
})

describe('lines crossed', () => {
  const codes = () =>
    model.answers.value.state === 'current' ? model.answers.value.plan.release.reasons.map((r) => r.code) : []

  test('silence, a list, and "none here" are three different things', () => {
    render(<LinesPanel model={model} />)
    expect(codes()).toContain('lines-not-asked')
    fireEvent.click(screen.getByLabelText('Asked: none here'))
    // Said by the answers as still needed; the fresh field itself is silent.
    expect(model.answers.value).toMatchObject({
      state: 'former',
      issues: expect.arrayContaining([expect.objectContaining({ path: 'utilitiesAsked.by' })]),
    })
    expect(model.issues.value).toEqual([])
    fireEvent.input(screen.getByLabelText('Who said so'), { target: { value: 'T. Marsh' } })
    model.set('utilitiesAsked.on', '2026-11-23')
    expect(codes()).not.toContain('lines-not-asked')
    fireEvent.click(screen.getByLabelText('Nobody has been asked yet'))
    expect(codes()).toContain('lines-not-asked')
  })

  test('what one choice held comes back when it is chosen again', () => {
    render(<LinesPanel model={model} />)
    fireEvent.click(screen.getByLabelText('Listed below'))
    fireEvent.input(screen.getByLabelText('Crosses at station'), { target: { value: '12 ft' } })
    fireEvent.click(screen.getByLabelText('Nobody has been asked yet'))
    expect(valueAt(model.document.value, 'utilities')).toBeUndefined()
    fireEvent.click(screen.getByLabelText('Listed below'))
    expect(screen.getByLabelText<HTMLInputElement>('Crosses at station').value).toBe('12 ft')
  })

  test('a depth without its datum is asked about', () => {
    model.set('utilities', [{ kind: 'gas', station: '12 ft', depth: '30 in', evidence: 'marked' }])
    render(<LinesPanel model={model} />)
    expect(model.issues.value.map((issue) => issue.path)).toContain('utilities.0.depthTo')
    const row = screen.getByRole('group', { name: 'Line 1' })
    const datum = within(row).getByLabelText('Depth is to')
    expect(datum.getAttribute('aria-invalid')).toBe('true')
    expect(within(row).getByText('What is the depth of this line measured to?')).toBeDefined()
    // What it may be already stands in the list: no second one of buttons.
    expect(within(row).queryByRole('button', { name: /^top/ })).toBeNull()
    fireEvent.change(datum, { target: { value: 'top' } })
    expect(at('utilities.0.depthTo')).toBe('top')
  })
})
