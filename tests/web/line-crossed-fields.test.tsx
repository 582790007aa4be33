// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact'
import { afterEach, expect, test } from 'vitest'
import { LineCrossedFields } from '../../web/crossings/form/line-crossed-fields.tsx'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'
import { createCrossingModel } from '../../web/state/crossing-model.ts'
import type { JsonObject } from '../../web/state/json.ts'

afterEach(cleanup)

const LINE = {
  kind: 'gas',
  station: '14 ft',
  depth: '1 m',
  depthTo: 'top',
  diameter: '2 in',
  evidence: 'detected',
}
const fieldsOf = (change: JsonObject) => {
  const model = createCrossingModel({ ...FIRST_PRESET, utilities: [{ ...LINE, ...change }] })
  render(<LineCrossedFields model={model} path="utilities.0" place={0} />)
}

test('both depths are read back in one sentence, each with what it is to', () => {
  fieldsOf({})
  expect(screen.getByText(/^Gas: top at 39-3\/8 in, bottom at 41-3\/8 in\. Your bore: top at/)).toBeTruthy()
})

test('a class of evidence says what it promises, and never that it is enough', () => {
  fieldsOf({ quality: { scheme: 'pas-128', level: 'B2' } })
  const said = screen.getByText(/either way in plan/).textContent
  // 250 mm is 9.84 in, 40 % of 1 m is 15.75 in.
  expect(said).toMatch(/^Within (0 ft )?9-\d+\/\d+ in either way in plan, 1 ft 3-3\/4 in up or down/)
  cleanup()
  fieldsOf({ quality: { scheme: 'asce-38', level: 'D' } })
  expect(screen.getByText('This level promises no position and no depth. Expose the line.')).toBeTruthy()
})

test('an exposed line is asked for who, when and the photo', () => {
  fieldsOf({ evidence: 'exposed', exposed: { by: 'Ana' } })
  expect(screen.getByLabelText('Measured depth')).toBeTruthy()
  for (const label of ['Opened and measured by', 'Opened when', 'Photo of the tape in the hole']) {
    expect(screen.getByLabelText(label), label).toBeTruthy()
  }
})
