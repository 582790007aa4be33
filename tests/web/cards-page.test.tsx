// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from '@testing-library/preact'
import { afterEach, expect, test } from 'vitest'
import { WhereTheNoseIs } from '../../web/cards/where-the-nose-is.tsx'
import { FIRST_PRESET } from '../../web/crossings/presets.ts'

afterEach(cleanup)

const type = (label: string, text: string) =>
  fireEvent.input(screen.getByLabelText(new RegExp(label)), { target: { value: text } })

test('a hose mark becomes a place even without a crossing in hand', () => {
  render(<WhereTheNoseIs crossing={null} />)
  type('^Hose mark', '10 ft')
  type('^Tool and coupling', '4 ft')
  expect(screen.getByText(/Nose at 14 ft/)).toBeTruthy()
  expect(screen.getByText(/cannot be planned/)).toBeTruthy()
})

test('taped from the nose nothing is added, and the depth of the line is said', () => {
  render(<WhereTheNoseIs crossing={FIRST_PRESET} />)
  type('^Hose mark', '10 ft')
  fireEvent.change(screen.getByLabelText(/taped from/), { target: { value: 'nose' } })
  expect(screen.getByText(/Nose at 10 ft/)).toBeTruthy()
  expect(screen.getByText(/below ground there/)).toBeTruthy()
})

test('a line between two positions, which waits for a library, does not break the card', async () => {
  const line = { launch: [-78.1, 38.2], reception: [-78.1, 38.20011] }
  render(<WhereTheNoseIs crossing={{ ...FIRST_PRESET, line, over: [] }} />)
  type('^Hose mark', '10 ft')
  type('^Tool and coupling', '4 ft')
  expect(await screen.findByText(/Nose at 14 ft/)).toBeTruthy()
})
